package org.headhouse.linter.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.report.DiagnosisReport;
import org.headhouse.linter.report.DiagnosisText;
import org.headhouse.linter.site.Side;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SiteDiagnosisTest {
  private static final String SITE =
      """
      format: 1
      site: elm-row
      stage: planned
      weather-station: {at: A, readings: [light]}
      line:
        baud: 9600
        parity: even
        stop-bits: 1
        cable: {gauge: 24 AWG, shielded: true, impedance: 120 ohm}
        bias:
          - {at: A, resistors: 560 ohm, supply: 5 V}
          - {at: R, resistors: 560 ohm, supply: 5 V}
      defaults:
        head: {comm-module: fitted, conductors: [A, B], outdoor: local}
        follower: {comm-module: fitted, conductors: [A, B], outdoor: head}
      chain:
        - {unit: A, role: head, address: 1, termination: 120 ohm, cable-to-next: 50 m}
        - {unit: B, role: follower, address: 2, termination: none, cable-to-next: 60 m}
        - {unit: C, role: follower, address: 3, termination: none, cable-to-next: 70 m}
        - {repeater: R, conductors: [A, B], termination: {in: 120 ohm, out: 120 ohm}, cable-to-next: 40 m}
        - {unit: D, role: follower, address: 4, termination: none, cable-to-next: 50 m}
        - {unit: E, role: follower, address: 5, termination: 120 ohm}
      """;

  private static SiteDiagnosis diagnosis(String site, String readings) throws IOException {
    List<SiteDiagnosis> sites = new ArrayList<>();
    SiteLinter.builder()
        .build()
        .diagnose(Stream.of(SiteInput.text("elm-row.yaml", site)), readings, sites::add);
    return sites.get(0);
  }

  private static SegmentDiagnosis segment(int index, String readings) throws IOException {
    return diagnosis(SITE, "[" + readings + "]").segments().get(index);
  }

  private static List<String> faults(SegmentDiagnosis segment) {
    return segment.candidates().stream()
        .flatMap(one -> one.faults().stream())
        .map(one -> String.join(" ", one.fault(), String.join("-", one.at())))
        .distinct()
        .toList();
  }

  @Test
  void twiceTheResistanceIsAMissingTerminatorOrABreak() throws IOException {
    SegmentDiagnosis segment = segment(0, "{at: A, pair-resistance: 118 ohm}");
    assertThat(segment.agrees()).isFalse();
    assertThat(faults(segment))
        .contains("terminator-missing R", "conductor-open A-B", "conductor-open C-R")
        .doesNotContain("pair-shorted B", "terminator-extra B", "bias-missing A");
    assertThat(segment.excluded()).isPositive();
    assertThat(segment.next()).isNotNull();
  }

  @Test
  void aSoundReadingExcludesNoFaultThatCannotBeSeen() throws IOException {
    SegmentDiagnosis segment = segment(0, "{at: A, pair-resistance: 61 ohm}");
    assertThat(segment.agrees()).isTrue();
    assertThat(faults(segment)).contains("unit-unpowered B", "conductors-swapped C");
  }

  /** At A, where the bias is, its own terminals are swapped along and read as they should. */
  @Test
  void belowZeroSaysSwapped() throws IOException {
    SegmentDiagnosis segment =
        segment(0, "{at: A, idle-voltage: 0.24 V}, {at: C, idle-voltage: -0.23 V}");
    assertThat(faults(segment))
        .containsExactly("conductors-swapped A", "conductors-swapped B", "conductors-swapped C");
  }

  @Test
  void twoFaultsAtOnceAreExplainedByNone() throws IOException {
    SegmentDiagnosis segment =
        segment(0, "{at: A, pair-resistance: 118 ohm}, {at: A, idle-voltage: -0.5 V}");
    assertThat(segment.isUnexplained()).isTrue();
    assertThat(segment.next()).isNull();
  }

  @Test
  void aReadingOfOneSideOfARepeaterIsThatOfItsSegment() throws IOException {
    SiteDiagnosis site = diagnosis(SITE, "{at: R, pair-resistance: 118 ohm}");
    assertThat(site.segments().get(0).agrees()).isNull();
    assertThat(site.segments().get(1).agrees()).isFalse();
    assertThat(site.segments().get(1).candidates())
        .flatExtracting(Candidate::faults)
        .contains(
            new NamedFault("terminator-value", List.of("R"), Side.OUT, List.of()),
            new NamedFault("terminator-missing", List.of("E"), null, List.of()));
    SiteDiagnosis inner = diagnosis(SITE, "{at: R, side: in, pair-resistance: 118 ohm}");
    assertThat(inner.segments().get(0).agrees()).isFalse();
    assertThat(inner.segments().get(1).agrees()).isNull();
  }

  @Test
  void whereAnswersEndExcludesWhatSilencesEarlierUnits() throws IOException {
    SegmentDiagnosis segment = segment(0, "{first-silent: C}");
    assertThat(segment.agrees()).isFalse();
    assertThat(faults(segment))
        .contains(
            "unit-unpowered C", "conductors-swapped C", "pair-shorted C", "conductor-open B-C")
        .doesNotContain("unit-unpowered B", "conductors-swapped B", "pair-shorted B");
    assertThat(segment.candidates())
        .flatExtracting(Candidate::faults)
        .doesNotContain(
            new NamedFault("conductor-open", List.of("A", "B"), null, List.of("D0", "D1")))
        .contains(new NamedFault("conductor-open", List.of("B", "C"), null, List.of("D0", "D1")));
  }

  /** A break before the repeater silences all beyond it. */
  @Test
  void whereAnswersEndBeyondARepeaterSaysSomethingOfBothSegments() throws IOException {
    SiteDiagnosis site = diagnosis(SITE, "{first-silent: D}");
    assertThat(faults(site.segments().get(0)))
        .contains("unit-unpowered R", "conductor-open C-R")
        .doesNotContain("unit-unpowered B");
    assertThat(site.segments().get(0).agrees()).isNull();
    assertThat(site.segments().get(1).agrees()).isFalse();
  }

  @Test
  void theLastDigitCounts() throws IOException {
    assertThat(segment(0, "{at: A, idle-voltage: 0.4 V}").agrees()).isTrue();
    assertThat(segment(0, "{at: A, idle-voltage: 0.400 V}").agrees()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({
    "'cable-to-next: 60 m', 'stub: 1 m', 'the cable length after \"B\" is missing'",
    "'gauge: 24 AWG, ', '', the gauge of the cable is missing",
    "'termination: none, cable-to-next: 60 m', 'cable-to-next: 60 m',"
        + " 'the file does not say whether \"B\" has a terminator'",
    "'at: A, resistors: 560 ohm, supply: 5 V', 'at: Z, resistors: 560 ohm, supply: 5 V',"
        + " the place of a bias is unknown"
  })
  void whatIsMissingIsReported(String text, String other, String reason) throws IOException {
    SiteDiagnosis site =
        diagnosis(
            SITE.replaceFirst(text, other == null ? "" : other), "{at: A, idle-voltage: 1 V}");
    SegmentDiagnosis segment = site.segments().get(0);
    assertThat(segment.notJudged()).containsExactly(reason);
    assertThat(segment.agrees()).isNull();
    assertThat(DiagnosisText.of(site)).contains("  This cannot be judged: " + reason + ".");
  }

  @Test
  void aReadingOfNoPlaceIsNotUsed() throws IOException {
    SiteDiagnosis site =
        diagnosis(SITE, "[{at: Z, idle-voltage: 1 V}, {at: B, toward: end, idle-voltage: 1 V}]");
    assertThat(site.notUsed()).hasSize(2);
    assertThat(site.segments().get(0).agrees()).isNull();
  }

  @Test
  void theRecordCountsWhereNothingIsFound() throws IOException {
    String record =
        "commissioning:\n  date: 2026-03-14\n  by: R.O.\n  measured: {pair-resistance: 118 ohm}\n";
    List<SiteDiagnosis> sites = new ArrayList<>();
    SiteLinter linter = SiteLinter.builder().build();
    for (String found : List.of("", "as-found: [{at: A, pair-resistance: 61 ohm}]\n")) {
      linter.diagnose(Stream.of(SiteInput.text("elm-row.yaml", SITE + record + found)), sites::add);
    }
    assertThat(sites)
        .extracting(site -> site.segments().get(0).agrees())
        .containsExactly(false, true);
  }

  @ParameterizedTest
  @CsvSource({
    "'{at: A, pair-resistance: 118}'",
    "'[{pair-resistance: 118 ohm}]'",
    "'118 ohm'",
    "''",
    "'['"
  })
  void readingsThatAreNotUnderstoodAreRefused(String readings) {
    assertThatThrownBy(() -> diagnosis(SITE, readings))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("as-found");
  }

  @Test
  void theReportHasTheFormThatIsPromised() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (DiagnosisReport report = new DiagnosisReport(out)) {
      report.add(
          new SiteDiagnosis(
              "elm-row",
              List.of(
                  new SegmentDiagnosis(
                      List.of("A", "B"),
                      false,
                      List.of(
                          new Candidate(
                              List.of(
                                  new NamedFault(
                                      "conductor-open", List.of("A", "B"), null, List.of("D0"))))),
                      23,
                      new NextMeasurement("idle-voltage", "B", null, null),
                      List.of())),
              true,
              List.of()));
    }
    assertThat(out.toString(StandardCharsets.UTF_8).replaceAll("\\s", ""))
        .isEqualTo(
            """
            {"sites":[{"site":"elm-row","segments":[{"items":["A","B"],"agrees":false,\
            "candidates":[{"faults":[{"fault":"conductor-open","at":["A","B"],"side":null,\
            "conductors":["D0"]}]}],"excluded":23,"next":{"reading":"idle-voltage","at":"B"},\
            "notJudged":[]}],"notUsed":[]}]}""");
  }
}
