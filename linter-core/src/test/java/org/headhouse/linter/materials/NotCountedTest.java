package org.headhouse.linter.materials;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.report.sheet.Sheets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What a file does not say is named, and is in no amount. */
class NotCountedTest {

  static BillOfMaterials bill(String text) {
    List<BillOfMaterials> bills = new ArrayList<>();
    Sheets.linter(1)
        .sheets(
            Stream.of(SiteInput.text("example.yaml", text)),
            Measure.METRIC,
            Paper.A4,
            sheet -> bills.add(sheet.materials().bill()));
    return bills.get(0);
  }

  private static List<String> notCounted(String text) {
    List<String> all = new ArrayList<>();
    bill(text)
        .counts()
        .forEach(
            count ->
                count
                    .notCounted()
                    .forEach(place -> all.add(count.material().word() + ": " + place)));
    return all;
  }

  private static MaterialCount cable(String text) {
    return bill(text).counts().stream()
        .filter(count -> count.material() == Material.CABLE)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void ofTheExampleNothingIsLeftOut() {
    assertThat(notCounted(Example.SITE)).isEmpty();
    assertThat(cable(Example.SITE).amount()).isEqualTo(40 + 60);
  }

  static Stream<Arguments> gaps() {
    String run = "cable-to-next: 60 m";
    String from = "from \"Seedling North\" to \"Hardening Bay\"";
    return Stream.of(
        Arguments.of("    " + run + "\n", "", "cable: cable " + from),
        Arguments.of(run, "cable-to-next: 60", "cable: cable " + from),
        Arguments.of(
            "termination: none",
            "stub: long\n    termination: none",
            "cable: stub of \"Seedling North\""),
        Arguments.of("    termination: none\n", "", "terminator: terminator at \"Seedling North\""),
        Arguments.of(
            "resistors: 510 ohm, ", "", "bias-resistor: value of the resistors at \"Propagation\""),
        Arguments.of(
            "resistors: 510 ohm",
            "resistors: 10 kohm",
            "bias-resistor: 10 kohm at \"Propagation\", usually built into the device"),
        Arguments.of(
            run,
            run + "\n    run-to-next: between-buildings",
            "surge-protector: the run " + from + " is between buildings, and has none"));
  }

  @ParameterizedTest
  @MethodSource("gaps")
  void whatIsMissingIsNamed(String written, String instead, String place) {
    assertThat(notCounted(Example.with(written, instead))).containsExactly(place);
  }

  @Test
  void aLengthThatIsNotKnownIsNotNone() {
    String one = Example.with("    cable-to-next: 60 m\n", "");
    assertThat(cable(one).amount()).isEqualTo(40);
    assertThat(cable(one).isComplete()).isFalse();
    String both = one.replace("    cable-to-next: 40 m\n", "");
    assertThat(cable(both).amount()).isNull();
    assertThat(cable(both).toOrder(Measure.METRIC, Slack.USUAL)).isNull();
    assertThat(cable(both).notCounted()).hasSize(2);
  }

  @Test
  void aModuleIsCountedWhereItIsNeeded() {
    String unit = "address: 2\n    comm-module: fitted";
    assertThat(modules(Example.SITE)).isEqualTo(3);
    assertThat(modules(Example.with(unit, "address: 2\n    comm-module: built-in"))).isEqualTo(2);
    String absent = Example.with(unit, "address: 2\n    comm-module: absent");
    assertThat(modules(absent)).isEqualTo(2);
    assertThat(notCounted(absent))
        .containsExactly(
            "comm-module: \"Seedling North\" has none, and cannot reach the line without one");
    assertThat(notCounted(Example.with(unit, "address: 2")))
        .containsExactly("comm-module: comm-module of \"Seedling North\" is not known");
    // Its type says that it needs one.
    String byType = Example.with(unit, "address: 2\n    device-type: eight-way");
    assertThat(modules(byType)).isEqualTo(3);
    assertThat(notCounted(byType)).isEmpty();
  }

  private static double modules(String text) {
    return bill(text).counts().stream()
        .filter(count -> count.material() == Material.COMM_MODULE && count.amount() != null)
        .mapToDouble(MaterialCount::amount)
        .sum();
  }

  @Test
  void nothingOfAFileWithoutAChainIsTakenForNothing() {
    assertThat(notCounted("format: 1\n")).containsExactly("cable: the chain is not known");
    assertThat(notCounted("format: 1\nchain: 7\n")).contains("cable: the chain is not known");
  }

  @Test
  void aCableBeyondTheLastItemIsNamed() {
    String text = Example.SITE + "    cable-to-next: 12 m\n";
    assertThat(cable(text).amount()).isEqualTo(100);
    assertThat(notCounted(text))
        .containsExactly("cable: 12 m after \"Hardening Bay\", which is the last item");
    assertThat(notCounted(Example.SITE + "    cable-to-next: none\n")).isEmpty();
  }

  @Test
  void aCommonNeedsAConductorOfItsOwn() {
    assertThat(cable(Example.SITE).type()).isEqualTo("24 AWG, shielded, 120 ohm, pair");
    assertThat(cable(Example.SITE.replace("[A, B]", "[A, B, C]")).type())
        .isEqualTo("24 AWG, shielded, 120 ohm, pair and common");
  }

  /** Equal values are one type, however they are written. */
  @Test
  void terminatorsAreCountedByValue() {
    String text =
        Example.with(
                "termination: 120 ohm\n    outdoor: {light: local",
                "termination: 0.12 kohm\n    outdoor: {light: local")
            .replace(
                "termination: 120 ohm\n    outdoor: {light: head",
                "termination: 120 ohm + 1 nF\n    outdoor: {light: head");
    assertThat(
            bill(text).counts().stream()
                .filter(count -> count.material() == Material.TERMINATOR)
                .map(count -> count.type() + " " + count.amount()))
        .containsExactly("120 ohm 1.0", "120 ohm + 1 nF 1.0");
  }

  /** What is a hair over a whole metre by the arithmetic of the machine is that metre. */
  @Test
  void ordersAreRoundedUp() {
    assertThat(Slack.USUAL.wholeUnits(100)).isEqualTo(110);
    assertThat(Slack.USUAL.wholeUnits(100.1)).isEqualTo(111);
    assertThat(new Slack(0).wholeUnits(0.2)).isEqualTo(1);
  }
}
