package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.headhouse.linter.site.Site;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * ChainStates of items: a unit is a letter, with ! where it has a terminator; a repeater is a
 * letter in brackets, with ! before it for the side in, behind it for the side out. Two terminators
 * on each segment: MODBUS over Serial Line V1.02 §3.4.5.
 */
class LineStateTest {

  private static Site site(String chain) {
    return States.site(
        "format: 1\nchain:\n"
            + Arrays.stream(chain.split(" ", -1))
                .map(item -> "  - {" + (item.startsWith("(") ? repeater(item) : unit(item)) + "}\n")
                .collect(Collectors.joining()));
  }

  private static String unit(String item) {
    return "unit: " + item.charAt(0) + ", termination: " + fitted(item.endsWith("!"));
  }

  private static String repeater(String item) {
    return "repeater: "
        + item.replaceAll("[(!)]", "")
        + ", termination: {in: "
        + fitted(item.startsWith("(!"))
        + ", out: "
        + fitted(item.endsWith("!)"))
        + "}";
  }

  private static String fitted(boolean fitted) {
    return fitted ? "120 ohm" : "none";
  }

  /** Before, after, at which items the work is done, and whether the line is whole then. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "A! B C!        | A! B C!         | -     | true",
        "A! B C         | A! B C          | -     | false",
        "A! B! C!       | A! B! C!        | -     | false",
        "A! B           | A! B            | -     | false",
        "A!             | A!              | -     | false",
        "A! (!R!) C!    | A! (!R!) C!     | -     | true",
        "A! (R!) C!     | A! (R!) C!      | -     | false",
        "A! (!R) C!     | A! (!R) C!      | -     | false",
        "A! (!R!) B! C! | A! (!R!) B! C!  | -     | false",
        "(R!) A!        | (R!) A!         | -     | true",
        "(!R) A!        | (!R) A!         | -     | false",
        "(!R!) A!       | (!R!) A!        | -     | true",
        "A! (!R)        | A! (!R)         | -     | true",
        "A! (!R!)       | A! (!R!)        | -     | true",
        "A! (R!)        | A! (R!)         | -     | false",
        "A! (!R!) (!S!) B! | A! (!R!) (!S!) B! | - | true",
        // A unit comes in: half done the line is open.
        "A! C!          | A! B C!         | A     | false",
        "A! C!          | A! B C!         | C     | true",
        "A! C!          | A! B C!         | A B C | true",
        "A! B C!        | A! C!           | A     | false",
        "A! B C!        | A! C!           | B     | false",
        "A! B C!        | A! C!           | A B C | true",
        // Its end moves.
        "A! B!          | A! B C!         | B     | false",
        "A! B!          | A! B C!         | B C   | true",
        "A! B C!        | A! B!           | B     | false",
        "A! B C!        | A! B!           | B C   | true",
        "A! B C!        | A! B!           | C     | false",
        "A! B C!        | A B! C!         | A     | false",
        "A! B C!        | A B! C!         | B     | false",
        "A! B C!        | A B! C!         | A B   | true",
        "A! B C! D!     | A! C! B D!      | B     | false",
      })
  void theLineIsWhole(String before, String after, String done, boolean whole) {
    List<TrackedItem> items = ItemMatcher.of(site(before), site(after));
    Set<TrackedItem> finished =
        items.stream().filter(item -> done.contains(item.name())).collect(Collectors.toSet());
    assertThat(LineState.of(ChainStates.of(items), finished).isWhole()).isEqualTo(whole);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "A             | A",
        "A B C         | A B C",
        "A (R) B       | A R, R B",
        "A B (R) C D   | A B R, R C D",
        "(R) A         | R A",
        "A (R)         | A R",
        "(R)           | R",
        "(R) (S)       | R S",
        "A (R) (S) B   | A R, R S, S B",
      })
  void segmentsEndAtRepeaters(String chain, String segments) {
    List<TrackedItem> items = ItemMatcher.of(site(chain), site(chain));
    assertThat(
            LineState.segments(items).stream()
                .map(one -> one.stream().map(TrackedItem::name).collect(Collectors.joining(" "))))
        .containsExactly(segments.split(", ", -1));
    assertThat(LineState.segments(List.of())).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"A!, 1", "A, 0", "(R), 0", "(!R), 1", "(R!), 1", "(!R!), 2"})
  void terminatorsAreCounted(String item, int number) {
    TrackedItem stays = ItemMatcher.of(site(item), site(item)).get(0);
    assertThat(LineState.terminators(stays, false)).isEqualTo(number);
    assertThat(LineState.terminators(stays, true)).isEqualTo(number);
    TrackedItem leaves = ItemMatcher.of(site(item), site("Z")).get(0);
    assertThat(LineState.terminators(leaves, false)).isEqualTo(number);
    assertThat(LineState.terminators(leaves, true)).isZero();
  }
}
