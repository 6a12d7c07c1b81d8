package org.headhouse.linter.draft;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.headhouse.linter.SiteLinter;
import org.junit.jupiter.api.Test;

/** A draft gives no unit an address that the policy keeps free. */
class KeptFreeListTest {

  private static SiteLinter linter(String ranges) {
    return Lists.linter("rules: {address.kept-free: {parameters: {ranges: " + ranges + "}}}\n");
  }

  private static String list(int units) {
    return "name,cable-to-next\n"
        + IntStream.rangeClosed(1, units)
            .mapToObj(i -> "Bay " + i + ",")
            .collect(Collectors.joining("\n"));
  }

  @Test
  void unitsAreNumberedAroundThem() {
    SiteLinter linter = linter("[2, 5-100]");
    String text = Lists.made(linter, list(8), Lists.settings("elm-row", null));
    assertThat(text.lines().filter(line -> line.startsWith("    address: ")))
        .extracting(line -> line.substring(13))
        .containsExactly("1", "3", "4", "101", "102", "103", "104", "105");
    assertThat(Lists.results(linter, text)).noneMatch(line -> line.contains("[address."));
  }

  @Test
  void moreUnitsThanAreLeft() {
    Draft draft =
        Lists.draft(linter("[11-255]"), list(11).getBytes(UTF_8), Lists.settings("elm-row", null));
    assertThat(Lists.faults((Draft.Refused) draft))
        .singleElement()
        .asString()
        .contains(
            "the list has 11 units: the addresses of a line end at 247, and 237 of them are kept"
                + " free");
  }
}
