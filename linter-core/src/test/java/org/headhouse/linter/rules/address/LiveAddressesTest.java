package org.headhouse.linter.rules.address;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.headhouse.linter.Example;
import org.headhouse.linter.Fixing;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.FixKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A unit of a line in operation keeps its address unless somebody decides otherwise: common
 * practice, no source.
 */
class LiveAddressesTest {
  private static final String RECORD =
      """
      commissioning:
        date: 2026-03-14
        by: R.O.
        measured: {pair-resistance: 60 ohm, idle-voltage: 0.29 V}
        outdoor-readings-seen: [Seedling North, Hardening Bay]
      """;

  /** What says that the line is in operation. */
  private enum Evidence {
    STAGE,
    EARLIER_STAGE,
    EARLIER_OPEN_POINT,
    RECORD_OF_A_PLANNED_SITE,
    RECORD_THAT_IS_NOT_UNDERSTOOD,
    READINGS_AS_FOUND,
    SERIAL_NUMBER,
    OPEN_POINT
  }

  private static String addresses(int second, int third) {
    return Example.SITE
        .replace("address: 2\n", "address: " + second + "\n")
        .replaceFirst(
            "(unit: Hardening Bay\n.*\n.*)address: 3", "$1address: " + third + " # third");
  }

  private static String text(String site, Evidence evidence) {
    return switch (evidence) {
      case STAGE -> site.replace("stage: planned", "stage: commissioned") + RECORD;
      case EARLIER_STAGE, EARLIER_OPEN_POINT -> site;
      case RECORD_OF_A_PLANNED_SITE -> site + RECORD;
      case RECORD_THAT_IS_NOT_UNDERSTOOD -> site + RECORD.replace("2026-03-14", "14.3.2026");
      case READINGS_AS_FOUND ->
          site + "as-found:\n  - {at: Propagation, pair-resistance: 118 ohm}\n";
      case SERIAL_NUMBER ->
          site.replace(
              "  - unit: Hardening Bay\n", "  - unit: Hardening Bay\n    serial-number: HH-0042\n");
      case OPEN_POINT -> site + "# look: whether the line works\n";
    };
  }

  private static SiteLinter linter(Evidence evidence) throws IOException {
    return switch (evidence) {
      case EARLIER_STAGE -> since(Example.with("stage: planned", "stage: commissioned"));
      case EARLIER_OPEN_POINT -> since(text(Example.SITE, Evidence.OPEN_POINT));
      default -> SiteLinter.builder().build();
    };
  }

  private static SiteLinter since(String before) throws IOException {
    return SiteLinter.builder()
        .before(SiteState.of(Stream.of(SiteInput.text("example.yaml", before)), null))
        .build();
  }

  private static List<String> results(SiteLinter linter, String text) {
    return linter.checkText("example.yaml", text).results().stream()
        .filter(result -> result.rule().startsWith("address."))
        .map(TextReport::inOneLine)
        .toList();
  }

  @ParameterizedTest
  @EnumSource(Evidence.class)
  void theOrderIsANote(Evidence evidence) throws IOException {
    assertThat(results(linter(evidence), text(addresses(3, 2), evidence)))
        .singleElement()
        .asString()
        .contains(": note: address 2 comes after address 3 on the chain: ")
        .contains("leave live units as they are");
  }

  @Test
  void theOrderIsAWarningWhereNothingIsInOperation() throws IOException {
    assertThat(results(since(Example.SITE), addresses(3, 2)))
        .singleElement()
        .asString()
        .contains(": warning: ")
        .contains("renumber them in chain order");
  }

  @ParameterizedTest
  @EnumSource(Evidence.class)
  void aGapIsAnErrorAndTheEntryToWriteIsShown(Evidence evidence) throws IOException {
    assertThat(results(linter(evidence), text(addresses(2, 5), evidence)))
        .singleElement()
        .asString()
        .contains(": error: no unit has addresses 3 to 4: ")
        .contains(
            "add to suppressions, with a reason: - {rule: address.gap, unit: \"Hardening Bay\", justification: }"
                + "; or give \"Hardening Bay\" address 3 and renumber those after"
                + " it");
  }

  /** The entry as it is shown accepts nothing; with a reason it accepts that gap, and no other. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'justification: '                         | 2 | 5 | error: no unit has addresses 3 to 4",
        "'justification: In store until next year' | 2 | 5 |",
        "'justification: In store until next year' | 3 | 5 | error: no unit has address 2"
      })
  void theEntryNeedsItsReason(String reason, int second, int third, String reported)
      throws IOException {
    String text =
        text(addresses(second, third), Evidence.STAGE)
            + "suppressions:\n  - {rule: address.gap, unit: \"Hardening Bay\", "
            + reason
            + "}\n";
    List<String> open =
        linter(Evidence.STAGE).checkText("example.yaml", text).results().stream()
            .filter(result -> result.rule().equals("address.gap") && !result.suppressed())
            .map(TextReport::inOneLine)
            .toList();
    if (reported == null) {
      assertThat(open).isEmpty();
    } else {
      assertThat(open).singleElement().asString().contains(reported);
    }
  }

  /** Of two units at one address, one gets a new one; the fix is the other way, and is named. */
  @ParameterizedTest
  @EnumSource(Evidence.class)
  void anAddressUsedTwiceIsCorrectedInEitherOfTwoWays(Evidence evidence) throws IOException {
    assertThat(results(linter(evidence), text(addresses(2, 2), evidence)))
        .singleElement()
        .asString()
        .contains(
            "give \"Hardening Bay\" address 3, or renumber the units as the goal changes says");
  }

  /** Neither a gap, nor the order, nor an address used twice moves a unit that is in operation. */
  @ParameterizedTest
  @EnumSource(Evidence.class)
  void noSafeFixRenumbers(Evidence evidence) throws IOException {
    for (String site : List.of(addresses(3, 2), addresses(2, 5), addresses(2, 2))) {
      String text = text(site, evidence);
      assertThat(Fixing.fix(linter(evidence), "example.yaml", text, FixKind.SAFE))
          .contains(site.lines().filter(line -> line.contains("address:")).toList());
      assertThat(Fixing.fix(linter(evidence), "example.yaml", text, FixKind.PROPOSED))
          .contains("address: 2\n", "address: 3 # third");
    }
  }

  /** Nothing else that takes work at a unit is done for the word planned alone. */
  @ParameterizedTest
  @ValueSource(strings = {"termination: none", "outdoor: {light: head, temperature: head}"})
  void noSafeFixTakesWorkAtAUnit(String sound) throws IOException {
    String faulty =
        Example.SITE.replaceFirst(
            Pattern.quote(sound),
            sound.replace("none", "120 ohm").replace("temperature: head", "temperature: local"));
    assertThat(faulty).isNotEqualTo(Example.SITE);
    SiteLinter since = linter(Evidence.EARLIER_STAGE);
    assertThat(Fixing.fix(since, "example.yaml", faulty, FixKind.SAFE)).isEqualTo(faulty);
    assertThat(Fixing.fix(since, "example.yaml", faulty, FixKind.PROPOSED)).isEqualTo(Example.SITE);
    assertThat(Fixing.fix(SiteLinter.builder().build(), "example.yaml", faulty, FixKind.SAFE))
        .isEqualTo(Example.SITE);
  }

  /**
   * What is misspelt or written twice may be what says that the line is in operation: its spelling
   * is put right, and then nothing is renumbered.
   */
  @ParameterizedTest
  @CsvSource({"comissioning:, commissioning:", "commisioning:, commissioning:"})
  void aMisspeltRecordIsARecord(String misspelt, String key) throws IOException {
    String text = addresses(3, 2) + RECORD.replace("commissioning:", misspelt);
    assertThat(Fixing.fix(SiteLinter.builder().build(), "example.yaml", text, FixKind.SAFE))
        .isEqualTo(addresses(3, 2) + RECORD.replace("commissioning:", key));
  }

  @Test
  void aSecondStageCounts() throws IOException {
    String text = addresses(3, 2) + "stage: commissioned\n";
    assertThat(Fixing.fix(SiteLinter.builder().build(), "example.yaml", text, FixKind.SAFE))
        .isEqualTo(text);
  }

  /** The unit that is new gets the other address, above all others, wherever it is on the chain. */
  @Test
  void theUnitThatHadTheAddressKeepsIt() throws IOException {
    String before = Example.with("stage: planned", "stage: commissioned");
    String after =
        before.replace(
            "  - unit: Seedling North\n",
            """
              - unit: Young Plants
                role: follower
                address: 2
                comm-module: fitted
                conductors: [A, B]
                termination: none
                outdoor: {light: head, temperature: head}
                cable-to-next: 10 m
              - unit: Seedling North
            """);
    assertThat(results(since(before), after))
        .singleElement()
        .asString()
        .startsWith("example.yaml:17:14: ")
        .contains("address 2 is used twice")
        .contains("give \"Young Plants\" address 4");
  }

  /** An address that is held for a unit in store is not given to another. */
  @Test
  void whatIsHeldIsNotHandedOut() throws IOException {
    String held =
        addresses(2, 4)
            .concat(
                "suppressions: [{rule: address.gap, unit: Hardening Bay, justification: In"
                    + " store.}]\n");
    String fourth =
        """
          - unit: Young Plants
            role: follower
            address: 4
            comm-module: fitted
            conductors: [A, B]
            termination: 120 ohm
            outdoor: {light: head, temperature: head}
        """;
    String twice =
        held.replace(
            "termination: 120 ohm\n    outdoor: {light: head, temperature: head}\n",
            "termination: none\n    outdoor: {light: head, temperature: head}\n"
                + "    cable-to-next: 10 m\n"
                + fourth);
    assertThat(results(SiteLinter.builder().build(), twice))
        .filteredOn(line -> line.endsWith("[address.duplicate]"))
        .singleElement()
        .asString()
        .contains("give \"Young Plants\" address 5");
    assertThat(Fixing.fix(SiteLinter.builder().build(), "example.yaml", twice, FixKind.SAFE))
        .contains("address: 4 # third", "address: 5\n");
  }
}
