package org.headhouse.linter.rules.address;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.headhouse.linter.Example;
import org.headhouse.linter.Fixing;
import org.headhouse.linter.RandomCases;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.report.ChangeReport;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.FixKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is kept free is passed over by all that hands out addresses. */
class AddressKeptFreeTest {

  private static SiteLinter linter(String ranges) throws IOException {
    return SiteLinter.builder().policy(SiteInput.text("linter.yaml", policy(ranges))).build();
  }

  /** Ranges that overlap are one, and what is left of too many is none. */
  @Test
  void rangesAreMergedAndLimited() throws IOException {
    assertThat(lines(linter("[7, 3-5, 4-9, 3, 20]"), addresses(1, 2, 8)))
        .singleElement()
        .asString()
        .contains("\"Hardening Bay\" has address 8, but 3 to 9 are kept free");
    assertThat(lines(linter("[" + "3-9, ".repeat(2000) + "]"), addresses(1, 2, 3))).hasSize(1);
    assertThat(lines(linter("[" + "3-9, ".repeat(2001) + "]"), addresses(1, 2, 3)))
        .singleElement()
        .asString()
        .contains("the list of the parameter \"ranges\" is too large: with its 2001 values");
  }

  private static String policy(String ranges) {
    return "format: 1\nrule-set: 1\nrules: {address.kept-free: {parameters: {ranges: "
        + ranges
        + "}}}\n";
  }

  private static List<String> lines(SiteLinter linter, String text) {
    return linter.checkText("example.yaml", text).results().stream()
        .map(TextReport::inOneLine)
        .toList();
  }

  /** The example, its three units with other addresses. */
  private static String addresses(int head, int second, int third) {
    return Example.SITE
        .replace("address: 1\n", "address: " + head + "\n")
        .replaceFirst("(?s)(Seedling.*?address:) 2\n", "$1 " + second + "\n")
        .replaceFirst("(?s)(Hardening.*?address:) 3\n", "$1 " + third + "\n");
  }

  @ParameterizedTest
  @CsvSource({
    "[2-9], 1, 10, 11",
    "[3], 1, 2, 4",
    "3, 1, 2, 4",
    "[ 3 - 3 ], 1, 2, 4",
    "[200-255], 1, 2, 3"
  })
  void makesNoGap(String ranges, int head, int second, int third) throws IOException {
    assertThat(lines(linter(ranges), addresses(head, second, third))).isEmpty();
  }

  /** Address 1 is the head unit's, also where it has none yet. */
  @Test
  void addressOneIsProposedToTheHeadUnitOnly() throws IOException {
    String site = addresses(1, 3, 3).replace("    address: 1\n", "");
    assertThat(lines(linter("[3-9]"), site))
        .noneMatch(line -> line.contains("North\" address 1;"))
        .anyMatch(line -> line.endsWith("\"Seedling North\" address 2 [address.kept-free]"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[3-9] | 1 | 2 | 3 | \"Hardening Bay\" has address 3, but 3 to 9 are kept free:"
            + " addresses kept free belong to other equipment on the line, now or later; give"
            + " \"Hardening Bay\""
            + " address 10 [address.kept-free]",
        "[2] | 1 | 2 | 3 | \"Seedling North\" has address 2, but it is kept free:"
            + " addresses kept free belong to other equipment on the line, now or later; number"
            + " the units in the"
            + " order of the chain, without 2 [address.kept-free]",
        "[3-9] | 1 | 2 | 12 | no unit has addresses 10 to 11: on the next visit nobody can tell"
            + " a spare address from a missing unit; give \"Hardening Bay\" address 10 and renumber"
            + " those after it [address.gap]",
        "[4-9] | 1 | 2 | 10 | no unit has address 3: on the next visit nobody can tell a spare"
            + " address from a missing unit; give \"Hardening Bay\" address 3 and renumber those"
            + " after it [address.gap]",
        "[4-9] | 1 | 2 | 12 | no unit has addresses 3 to 11, also without those that are"
            + " kept free: on the next visit nobody can tell a spare address from a missing unit;"
            + " give \"Hardening Bay\" address 3 and renumber those after it [address.gap]",
        "[3-9] | 1 | 2 | 2 | give \"Hardening Bay\" address 10 [address.duplicate]",
        "[3-9] | 1 | 2 | 250 | give \"Hardening Bay\" address 10 [address.reserved]",
        "[3-255] | 1 | 2 | 250 | give \"Hardening Bay\" a line of its own [address.reserved]",
        "[3-255] | 1 | 2 | 3 | give \"Hardening Bay\" a line of its own [address.kept-free]",
        "[4-9] | 5 | 2 | 3 | give \"Propagation\" address 1 [head.address]",
        "[3-9] | 1 | 10 | 2 | renumber them in chain order [address.order]"
      })
  void oneMistakeIsReportedOnce(String ranges, int head, int second, int third, String end)
      throws IOException {
    assertThat(lines(linter(ranges), addresses(head, second, third)))
        .singleElement()
        .asString()
        .endsWith(end);
  }

  /** Whatever is kept free, and whatever the addresses were: mended once, nothing is left. */
  @Test
  void theFixHandsOutNoneOfThem() throws IOException {
    RandomCases.each(
        60,
        random -> {
          int from = 2 + random.nextInt(8);
          int to = from + random.nextInt(20);
          SiteLinter linter = linter("[" + from + "-" + to + ", 200-247]");
          String broken =
              addresses(1 + random.nextInt(3), 1 + random.nextInt(30), 1 + random.nextInt(250));
          int[] free = IntStream.rangeClosed(1, 40).filter(a -> a < from || a > to).toArray();
          assertThat(Fixing.fix(linter, "example.yaml", broken, FixKind.SAFE))
              .as("%d to %d: %s", from, to, broken)
              .isEqualTo(addresses(free[0], free[1], free[2]));
        });
  }

  @Test
  void noStepOfAPlanUsesOneEvenForAMoment() throws IOException {
    String before = addresses(1, 2, 3);
    String swapped = addresses(1, 3, 2);
    assertThat(plan("[200-247]", before, swapped)).contains("to 4, a spare one");
    assertThat(plan("[4-9]", before, swapped)).contains("to 10, a spare one");
    assertThat(plan("[4-255]", before, swapped)).doesNotContain("a spare one");
  }

  /** A unit that leaves an address that is kept free is set once, like any other. */
  @Test
  void aUnitThatLeavesOneIsSetOnce() throws IOException {
    assertThat(plan("[3-9]", addresses(1, 2, 3), addresses(1, 2, 10)))
        .contains("address from 3 to 10")
        .doesNotContain("a spare one");
  }

  private static String plan(String ranges, String before, String after) throws IOException {
    return String.join(
        "\n", ChangeReport.text("before", linter(ranges).changes(state(before), state(after))));
  }

  private static SiteState state(String text) throws IOException {
    return SiteState.of(Stream.of(SiteInput.text("example.yaml", text)), null);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[1-9] | 51 | \"1-9\": address 1 is that of the head unit; start with 2",
        "[57, 1] | 55 | \"1\": address 1 is that of the head unit; write for example 100-109",
        "[109-100] | 51 | \"109-100\": it must be an address or a range of addresses from 2 to 255,"
            + " such as 100-109; write 100-109",
        "[100-300] | 51 | \"100-300\": it must be an address or a range",
        "[100 to 109] | 51 | write for example 100-109",
        "some | 50 | \"some\": it must be an address or a range",
        "0 | 50 | \"0\": it must be an address or a range"
      })
  void whatIsWrongInThePolicyIsReportedAtItsPlace(String ranges, int column, String contained)
      throws IOException {
    assertThat(lines(linter(ranges), Example.SITE))
        .singleElement()
        .asString()
        .startsWith("linter.yaml:3:" + column + ": error: the parameter \"ranges\" cannot be ")
        .contains(contained)
        .endsWith("[schema.bad-value]");
  }

  @ParameterizedTest
  @ValueSource(strings = {"[{from: 2, to: 9}]", "[[2, 9]]", "{from: 2}"})
  void whatIsNoTextIsReportedByTheSchema(String ranges) throws IOException {
    assertThat(lines(linter(ranges), Example.SITE))
        .singleElement()
        .asString()
        .startsWith("linter.yaml:3:")
        .endsWith("[schema.wrong-type]");
  }

  @Test
  void withoutRangesItIsSilent() throws IOException {
    assertThat(lines(linter("[]"), addresses(1, 2, 5)))
        .singleElement()
        .asString()
        .endsWith("[address.gap]");
  }

  /** A rule that is off reports nothing; that other equipment has the addresses stays true. */
  @Test
  void whatIsKeptFreeIsPassedOverAlsoWhereTheRuleIsOff() throws IOException {
    String policy =
        policy("[3-9]")
            .replace("{parameters", "{level: none, parameters")
            .replace("}}}", "}}, address.gap: {level: none}, address.order: {level: none}}");
    SiteLinter linter = SiteLinter.builder().policy(SiteInput.text("linter.yaml", policy)).build();
    assertThat(lines(linter, addresses(1, 2, 10))).isEmpty();
    assertThat(lines(linter, addresses(1, 2, 3))).isEmpty();
  }
}
