package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Who is who in two states of a chain. A unit is written as name, address, type, and role r or s, a
 * repeater as its name in brackets.
 */
class ItemMatcherTest {

  private static Site site(String chain) {
    List<String> lines = new ArrayList<>();
    lines.add("format: 1");
    lines.add("chain:");
    for (String item : chain.split(", ", -1)) {
      if (item.startsWith("(")) {
        lines.add("  - {repeater: " + item.substring(1, item.length() - 1) + "}");
        continue;
      }
      String[] part = item.split(" ", -1);
      List<String> keys = new ArrayList<>();
      keys.add("unit: " + part[0]);
      keys.add("address: " + part[1]);
      if (part.length > 2) {
        keys.add("device-type: " + part[2]);
      }
      if (part.length > 3) {
        keys.add("role: " + (part[3].equals("r") ? "head" : "follower"));
      }
      lines.add("  - {" + String.join(", ", keys) + "}");
    }
    return States.site(String.join("\n", lines) + "\n");
  }

  private static String reported(TrackedItem item) {
    String before = name(item.before());
    String after = name(item.after());
    if (before == null || after == null) {
      return before == null ? "+" + after : "-" + before;
    }
    return before.equals(after) ? after : before + ">" + after;
  }

  private static @Nullable String name(@Nullable ChainItem item) {
    return item == null ? null : item.name().orNull();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "A 1, B 2           | A 1, B 2           | A B",
        "A 1, B 2, C 3      | A 1, C 2, B 3      | A C B",
        "A 1, B 2, C 3      | A 1, C 3           | A -B C",
        "A 1, B 2, C 3      | B 2, C 3           | -A B C",
        "A 1, B 2, C 3      | A 1, B 2           | A B -C",
        "A 1, B 2, C 3, D 4 | A 1, D 4           | A -B -C D",
        "A 1, C 3           | A 1, B 2, C 3      | A +B C",
        // By address at the same place, whatever the name; not one that is found by its name.
        "A 1, B 2           | A 1, N 2           | A B>N",
        "A 1, B 2, C 3      | A 1, C 2, B 9      | A C B",
        "A 1, B 2           | A 1, N 3           | A -B +N",
        "A 1, B 2           | B 1, N 2           | -A B +N",
        "A 1, B 2, C 3      | X 1, Y 2, Z 3      | A>X B>Y C>Z",
        "A 1, B 2, C 3, D 4 | A 1, X 2, Y 3, D 4 | A B>X C>Y D",
        "A 1, B 2, C 3      | A 1, M 4, N 2, C 3 | A +M B>N C",
        // A new house may have the address that became free.
        "A 1, B 2, C 3      | A 1, C 3, N 2      | A -B C +N",
        "A 1, B 2, C 3      | N 2, A 1, C 3      | +N A -B C",
        "A 1, B 2 t r, C 3, D 4 | A 1, C 3, N 2 t r, D 4 | A -B C +N D",
        "A 1, B 2, C 3, D 4 | A 1, D 4, X 3, Y 2 | A -B -C D +X +Y",
        // By place, of one type and role, between the same neighbours.
        "A 1, B 2 t r, C 3  | A 1, N 9 t r, C 3  | A B>N C",
        "A 1, B 2 t r       | A 1, N 9 t r       | A B>N",
        "B 2 t r, C 3       | N 9 t r, C 3       | B>N C",
        "A 1, B 2 t r, C 3  | A 1, N 9 u r, C 3  | A -B +N C",
        "A 1, B 2 t r, C 3  | A 1, N 9 t s, C 3  | A -B +N C",
        "A 1, B 2 t, C 3    | A 1, N 9 t, C 3    | A -B +N C",
        "A 1, B 2, C 3      | A 1, N 9, C 3      | A -B +N C",
        "A 1, B 2 t r, C 3  | A 1, N 9 t r, M 8 t r, C 3 | A -B +N +M C",
        "A 1, B 2 t r, D 4 t r, C 3 | A 1, N 9 t r, C 3 | A -B -D +N C",
        "A 1, B 2 t r, C 3  | A 1, C 3, N 9 t r  | A -B C +N",
        // Of another type it is another unit; under the same name, between the same, exchanged.
        "A 1, B 2 t         | A 1, B 2 u         | A B",
        "A 1, B 2 t, C 3    | A 1, N 4, B 2 u, C 3 | A +N B C",
        "A 1, B 2 t, C 3    | A 1, C 3, B 2 u    | A -B C +B",
        "A 1, B 2 t, C 3    | A 1, N 2 u, C 3    | A -B +N C",
        "A 1, B 2 t         | A 1, B 2           | A B",
        "A 1, B 2           | A 1, B 2 u         | A B",
        // Repeaters are no units.
        "A 1, (R), B 2      | A 1, (S), B 2      | A R>S B",
        "A 1, (R), B 2      | A 1, R 2, N 3      | A -R B>R +N",
        "A 1, (R), B 2      | A 1, N 3 t r, B 2  | A -R +N B",
        "(R), A 1           | A 1, (R)           | A R",
      })
  void items(String before, String after, String expected) {
    List<String> reported =
        ItemMatcher.of(site(before), site(after)).stream().map(ItemMatcherTest::reported).toList();
    assertThat(String.join(" ", reported)).isEqualTo(expected);
  }
}
