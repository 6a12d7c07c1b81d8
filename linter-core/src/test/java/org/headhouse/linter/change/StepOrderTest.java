package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.site.ExcludedAddresses;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which step comes before which, and what goes with it: common practice, no source. */
class StepOrderTest {
  private static final String SITE =
      """
      format: 1
      site: example
      stage: commissioned
      weather-station: {at: Head House, readings: [light]}
      line:
        baud: 9600
        parity: even
        stop-bits: 1
        traffic: {broadcast: {registers: 12, every: 5 s}}
      chain:
        - {unit: Head House, role: head, address: 1, conductors: [A, B], termination: 120 ohm, vents: none, outdoor: {light: local}, cable-to-next: 30 m}
        - {unit: Palms, role: follower, address: 2, conductors: [A, B], termination: none, vents: roof, stale-after: 30 s, outdoor: {light: head}, cable-to-next: 30 m}
        - {equipment: Meter, address: 9, conductors: [A, B], termination: none, polled: {by: head, registers: 4, every: 10 s}, cable-to-next: 30 m}
        - {unit: Ferns, role: follower, address: 3, conductors: [A, B], termination: 120 ohm, vents: side, outdoor: {light: head}}
      supervision: {link: serial, zones: [Head House, Palms, Ferns, Orphan]}
      """;

  private static List<PlannedStep> steps(String... edits) {
    return stepsOf(SITE, edits);
  }

  private static List<PlannedStep> stepsOf(String site, String... edits) {
    String edited = site;
    for (int i = 0; i < edits.length; i += 2) {
      assertThat(edited).contains(edits[i]);
      edited = edited.replace(edits[i], edits[i + 1]);
    }
    FieldWork work =
        SiteComparison.of(States.site(site), States.site(edited), ExcludedAddresses.NONE).work();
    assertThat(work).isInstanceOf(FieldWork.Plan.class);
    return ((FieldWork.Plan) work).steps();
  }

  private static List<String> units(List<PlannedStep> steps) {
    return steps.stream()
        .map(PlannedStep::work)
        .map(
            step -> step instanceof Step.SetUnit set ? set.unit() : step.getClass().getSimpleName())
        .toList();
  }

  /** Followers wait longer before the readings come less often, and the other way round. */
  @Promise("head-last")
  @ParameterizedTest
  @CsvSource({
    "every: 5 s, every: 20 s, Palms, Head House",
    "every: 5 s, every: 2 s, Head House, Palms",
    "registers: 12, registers: 10, Palms, Head House",
    "registers: 12, registers: 14, Head House, Palms",
  })
  void whatTheHeadUnitSendsIsAStep(String text, String other, String first, String second) {
    List<PlannedStep> steps = steps(text, other, "stale-after: 30 s", "stale-after: 90 s");
    assertThat(units(steps)).containsExactly(first, second);
    assertThat(steps.get(first.equals("Head House") ? 0 : 1).withoutReadings())
        .contains("Palms", "Ferns");
  }

  /** A zone that names no unit may be asked at any address. */
  @Promise("right-house")
  @Test
  void softwareIsStoppedBeforeTheFirstAddressMoves() {
    List<PlannedStep> steps = steps("address: 3", "address: 4");
    assertThat(units(steps)).containsExactly("StopSoftware", "SetAddress", "ResumeSoftware");
    assertThat(steps.get(0).pollingLast())
        .containsExactly(PollingChange.pause(PollingChange.Client.SOFTWARE, "Orphan", null));
    assertThat(steps.get(1).pollingLast())
        .containsExactly(PollingChange.move(PollingChange.Client.SOFTWARE, "Ferns", 3, 4));
    assertThat(steps.get(1).checks())
        .containsSubsequence(
            Check.of(Check.Kind.RESTARTED, "Ferns", 4),
            Check.of(Check.Kind.NAME_READ_BACK, "Ferns", 4),
            new Check(Check.Kind.NO_ANSWER, List.of(), 3, null));
  }

  /**
   * Other equipment has an address as well, and the head unit asks it there, at a spare one too.
   */
  @Promise("one-address")
  @Test
  void otherEquipmentMovesLikeAUnit() {
    List<PlannedStep> steps =
        steps(
            "Meter, address: 9", "Meter, address: 3",
            "follower, address: 3", "follower, address: 9");
    assertThat(steps.stream().map(PlannedStep::work).filter(Step.SetAddress.class::isInstance))
        .hasSize(3);
    assertThat(steps.stream().flatMap(one -> one.pollingLast().stream()))
        .containsSubsequence(
            PollingChange.move(PollingChange.Client.HEAD, "Meter", 9, 10).ofOtherDevice(),
            PollingChange.move(PollingChange.Client.HEAD, "Meter", 10, 3).ofOtherDevice());
  }

  /** As long as a unit follows, it knows what to do when the readings stop, and not after. */
  @Test
  void whatAFollowerDoesWithoutReadingsGoesWithItsRole() {
    List<PlannedStep> steps =
        stepsOf(
            SITE.replace("stale-after: 30 s", "on-stale-readings: close, stale-after: 30 s"),
            "at: Head House",
            "at: Palms",
            "Head House, role: head",
            "Head House, on-stale-readings: close, role: follower",
            "outdoor: {light: local}",
            "outdoor: {light: head}",
            "Palms, role: follower",
            "Palms, role: head",
            "on-stale-readings: close, stale-after: 30 s, outdoor: {light: head}",
            "outdoor: {light: local}");
    assertThat(units(steps)).containsExactly("StopSoftware", "Wire", "ResumeSoftware");
    assertThat(((Step.Wire) steps.get(1).work()).places())
        .filteredOn(place -> place.actions().stream().anyMatch(FieldAction.Set.class::isInstance))
        .containsExactly(
            new WiringPlace(
                "Head House",
                List.of(
                    new FieldAction.Set(
                        List.of(
                            new ValueChange("role", "head", "follower"),
                            new ValueChange("light", "local", "head"),
                            new ValueChange("on-stale-readings", null, "close")),
                        true))),
            new WiringPlace(
                "Palms",
                List.of(
                    new FieldAction.Set(
                        List.of(
                            new ValueChange("role", "follower", "head"),
                            new ValueChange("light", "head", "local"),
                            new ValueChange("on-stale-readings", "close", null),
                            new ValueChange("stale-after", "30 s", null),
                            new ValueChange("traffic.broadcast", null, "12 registers every 5 s")),
                        false))));
  }

  /** Software has it in a list of its own, and it has no name to read. */
  @Test
  void otherEquipmentIsNoZone() {
    List<PlannedStep> steps =
        steps(
            "  - {unit: Ferns",
            "  - {equipment: Scales, address: 7, conductors: [A, B], termination: none, polled: {by:"
                + " supervision, registers: 4, every: 10 s}, cable-to-next: 5 m}\n  - {unit: Ferns");
    assertThat(steps)
        .flatExtracting(PlannedStep::pollingLast)
        .containsExactly(
            PollingChange.add(PollingChange.Client.SOFTWARE, "Scales", 7).ofOtherDevice());
    assertThat(steps)
        .flatExtracting(PlannedStep::checks)
        .contains(Check.of(Check.Kind.ANSWERS, "Scales", 7))
        .extracting(Check::kind)
        .doesNotContain(Check.Kind.NAME_READ_BACK);
  }

  /** Nobody can set how long a vent takes. */
  @Test
  void theCloseTimeIsNotSet() {
    assertThat(steps("vents: roof", "vents: roof, close-time: 90 s")).isEmpty();
    String timed = SITE.replace("vents: side", "vents: side, close-time: 90 s, serial-number: S");
    assertThat(stepsOf(timed, "serial-number: S", "serial-number: T"))
        .extracting(PlannedStep::work)
        .first()
        .satisfies(
            step ->
                assertThat(((Step.Prepare) step).settings())
                    .extracting(ValueChange::what)
                    .contains("vents")
                    .doesNotContain("close-time"));
  }

  /** A sensor is fitted before anybody takes its reading for what it is. */
  @Test
  void aNewReadingIsTakenOnceItIsMeasured() {
    List<PlannedStep> steps =
        steps(
            "readings: [light]", "readings: [light, rain]",
            "light: local}", "light: local, rain: local}",
            "light: head}", "light: head, rain: head}");
    assertThat(units(steps)).containsExactly("Wire", "Head House", "Palms", "Ferns");
  }

  /** The supplies of the segment are off for it anyway. */
  @Promise("measured-once")
  @Test
  void theResistanceIsMeasuredWithTheLastPiece() {
    List<PlannedStep> steps =
        steps("address: 2,", "address: 2, stub: 1 m,", "address: 3,", "address: 3, stub: 1 m,");
    assertThat(units(steps)).containsExactly("Wire", "Wire");
    assertThat(steps.get(0).checks())
        .noneMatch(check -> check.kind() == Check.Kind.PAIR_RESISTANCE);
    assertThat(steps.get(1).checks())
        .filteredOn(check -> check.kind() == Check.Kind.PAIR_RESISTANCE)
        .isNotEmpty();
    assertThat(((Step.Wire) steps.get(1).work()).isolated())
        .containsExactly("Head House", "Palms", "Meter", "Ferns");
  }

  /** Its supply is that of a computer: on, it would drive the pair that a meter is held to. */
  @Test
  void aConverterIsIsolatedForTheMeterToo() {
    String site =
        SITE.replace(
            "  - {equipment: Meter",
            "  - {converter: Office, conductors: [A, B], termination: none, cable-to-next: 5 m}\n"
                + "  - {equipment: Meter");
    List<PlannedStep> steps = stepsOf(site, "address: 2,", "address: 2, stub: 1 m,");
    assertThat(steps)
        .extracting(PlannedStep::work)
        .filteredOn(Step.Wire.class::isInstance)
        .last()
        .satisfies(work -> assertThat(((Step.Wire) work).isolated()).contains("Office"));
  }
}
