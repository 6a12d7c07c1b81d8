package org.headhouse.linter.figures;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is missing, faulty or no real value leaves out the figures that need it, and only those. */
class MissingPartsTest {
  private static final String SITE =
      new SiteText()
          .bias("Head House", "560 ohm", "5 V")
          .line("maximum-temperature", "20 degC")
          .broadcast(12, "5 s")
          .unit("120 ohm", "40 m")
          .unit("none", "60 m")
          .unit("120 ohm", "")
          .polls("serial", "every: 20 s, registers: 60, timeout: 1 s, retries: 1")
          .toString();

  /** Length, network, traffic: what is left of the three. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "baud: 9600                  | baud: 9600            | length network traffic",
        "baud: 9600                  | baud: fast            | length network",
        "baud: 9600                  | baud: 0               | length network",
        "baud: 9600                  | bauds: 9600           | length network",
        "parity: even                | parity: mark          | length network",
        "stop-bits: 1                | stop-bits: 3          | length network",
        "line:                       | lines:                | length",
        "gauge: 24 AWG               | gauge: 41 AWG         | length traffic",
        "gauge: 24 AWG               | gauge: 24             | length traffic",
        "gauge: 24 AWG               | gauge: 0 mm2          | length traffic",
        "gauge: 24 AWG               | gauge: 0 AWG          | length network traffic",
        "gauge: 24 AWG               | gauge: 40 AWG         | length network traffic",
        "gauge: 24 AWG, shielded     | shielded              | length traffic",
        "impedance: 120 ohm          | impedance: 0 ohm      | length network traffic",
        "temperature: 20 degC        | temperature: -300 degC| length traffic",
        "temperature: 20 degC        | temperature: -40 degF | length network traffic",
        "temperature: 20 degC        | temperature: warm     | length traffic",
        "temperature: 20 degC        | temperature: 999999999 degC | length network traffic",
        "resistors: 560 ohm          | resistors: 0 ohm      | length traffic",
        "resistors: 560 ohm          | resistors: 560        | length traffic",
        "supply: 5 V                 | supply: 0 V           | length traffic",
        "supply: 5 V                 | supply: 5             | length traffic",
        "bias: [                     | bias: [4, 5,          | length traffic",
        "at: Head House, resistors   | at: Nowhere, resistors| length network traffic",
        "termination: none           | termination: 0 ohm    | length traffic",
        "termination: none           | termination: 120      | length traffic",
        "termination: none           | terminator: none      | length traffic",
        "termination: none           | termination: 1 ohm    | length network traffic",
        "termination: 120 ohm        | termination: none     | length network traffic",
        "termination: 120 ohm        | termination: 120 ohm + 1 nF | length network traffic",
        "cable-to-next: 60 m         | cable-to-next: 0 m    | length network traffic",
        "cable-to-next: 60 m         | cable-to-next: 60     | traffic",
        "cable-to-next: 60 m         | cable-to-next: -60 m  | traffic",
        "cable-to-next: 60 m         | # not measured yet    | traffic",
        "cable-to-next: 60 m         | cable-to-next: 999999999 ft | length network traffic",
        "every: 5 s                  | every: 0 s            | length network",
        "every: 5 s                  | every: 5              | length network",
        "every: 5 s                  | every: 0.000000001 ms | length network traffic",
        "registers: 12               | registers: 0          | length network",
        "registers: 12               | registers: 1000       | length network traffic",
        "registers: 12               | registers: 5000       | length network",
        "registers: 60               | registers: -1         | length network",
        "every: 20 s                 | every: 0 ms           | length network",
        "timeout: 1 s                | timeout: 0 s          | length network",
        "timeout: 1 s                | timeout: long         | length network",
        "retries: 1                  | retries: -1           | length network",
        "retries: 1                  | retries: 11           | length network",
        "'zones: [Head House, Bay 2, Bay 3]' | 'zones: []'   | length network",
        "link: serial                | link: radio           | length network",
        "link: serial, zones         | links: serial, zones  | length network traffic",
        "role: head                  | role: follower        | length network traffic",
        "role: follower              | role: head            | length network traffic",
        "unit: Bay 3                 | unit: Bay 2           | length network traffic",
        "unit: Bay 3                 | unit: 3               | length network traffic",
        "unit: Bay 3                 | repeater: Bay 3       | length traffic",
      })
  void whatIsLeft(String text, String other, String left) {
    SiteFigures figures = LineCheck.of(SITE).with(text, other).figures();
    SegmentSummary segment = figures.segments().get(0);
    StringBuilder found = new StringBuilder();
    found.append(segment.lengthMetres() == null ? "" : "length ");
    found.append(segment.figures() == null ? "" : "network ");
    found.append(figures.traffic() == null ? "" : "traffic");
    assertThat(found.toString().strip()).isEqualTo(left);
    assertThat(figures.segments()).hasSize(1);
    assertThat(segment.items()).hasSize(3);
  }

  /** Neither the rules nor the figures fail on any of them. */
  @ParameterizedTest
  @ValueSource(strings = {"0 m", "0.000000001 m", "999999999.999999999 ft"})
  void lengthsOfAnySize(String length) {
    LineCheck check = LineCheck.of(SITE).with("60 m", length).with("40 m", length);
    assertThat(check.figures().segments()).hasSize(1);
    assertThat(check.results()).allSatisfy(one -> assertThat(one.rule()).isNotEmpty());
  }

  @Test
  void twoBiasesAtOneUnitAreOneOfBothResistors() {
    LineCheck check =
        LineCheck.of(SITE)
            .with("bias: [", "bias: [{at: Head House, resistors: 470 ohm, supply: 5 V}, ");
    LineCheck together = LineCheck.of(SITE).with("resistors: 560 ohm", "resistors: 255.534 ohm");
    assertThat(lowestIdle(check)).isCloseTo(lowestIdle(together), within(1e-6));
    assertThat(check.rules()).containsExactly("bias.several");
  }

  private static double lowestIdle(LineCheck check) {
    return requireNonNull(requireNonNull(check.figures().segments().get(0).figures()).lowestIdle())
        .volts();
  }

  @Test
  void twoUnitsOfOneNameAreComputedAndTheFirstIsBiased() {
    LineCheck twice = LineCheck.of(SITE).with("Bay 2", "Head House");
    assertThat(twice.figures().segments().get(0).figures())
        .usingRecursiveComparison()
        .ignoringFields("items")
        .isEqualTo(LineCheck.of(SITE).figures().segments().get(0).figures());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "# later\n",
        "[]",
        "{}",
        "text",
        "chain: []\n",
        "chain: text\n",
        "line: []\n",
        "- 1\n"
      })
  void aFileThatIsNoSiteHasNoSegments(String text) {
    SiteFigures figures = LineCheck.of(text).figures();
    assertThat(figures).isEqualTo(new SiteFigures("example.yaml", List.of(), null, null));
  }

  /** A chain of one item, or of repeaters alone. */
  @ParameterizedTest
  @CsvSource({
    "'- unit: Alone', Alone",
    "'- {repeater: Alone, termination: {in: none, out: none}}', Alone",
    "'- {}', item 1",
    "'- 5', item 1"
  })
  void aChainOfOneItem(String item, String name) {
    String head = SITE.substring(0, SITE.indexOf("chain:")) + "chain:\n  ";
    SiteFigures figures = LineCheck.of(head + item + "\n").figures();
    assertThat(figures.segments()).hasSize(1);
    assertThat(figures.segments().get(0).items()).containsExactly(name);
    assertThat(figures.segments().get(0).lengthMetres()).isZero();
  }

  @Test
  void repeatersAlone() {
    SiteFigures figures =
        LineCheck.of(
                new SiteText()
                    .bias("Left", "560 ohm", "5 V")
                    .repeater("Left", "120 ohm", "10 m")
                    .repeater("Right", "120 ohm", "10 m")
                    .repeater("Right", "120 ohm", ""))
            .figures();
    assertThat(figures.segments())
        .extracting(SegmentSummary::items)
        .containsExactly(List.of("Left", "Right"), List.of("Right", "Right"));
    assertThat(figures.segments())
        .allSatisfy(
            segment -> {
              assertThat(segment.figures()).isNotNull();
              assertThat(segment.unitLoads()).isEqualTo(2);
            });
  }
}
