package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.site.ExcludedAddresses;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Another device under the name and at the place of an old one: common practice, no source. */
class ExchangeTest {
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
        - {unit: Head House, role: head, address: 1, serial-number: S-1, conductors: [A, B], termination: 120 ohm, vents: none, outdoor: {light: local}, cable-to-next: 30 m}
        - {unit: Palms, role: follower, address: 2, device-type: old, serial-number: S-2, conductors: [A, B], termination: none, vents: roof, on-stale-readings: close, outdoor: {light: head}, cable-to-next: 30 m}
        - {unit: Ferns, role: follower, address: 3, serial-number: S-3, conductors: [A, B], termination: 120 ohm, vents: side, outdoor: {light: head}}
      supervision: {link: serial, zones: [Head House, Palms, Ferns]}
      """;

  private static SiteChange.Changed changed(String text, String other) {
    assertThat(SITE).contains(text);
    return SiteComparison.of(
        States.site(SITE), States.site(SITE.replace(text, other)), ExcludedAddresses.NONE);
  }

  private static List<PlannedStep> steps(String text, String other) {
    assertThat(changed(text, other).work()).isInstanceOf(FieldWork.Plan.class);
    return ((FieldWork.Plan) changed(text, other).work()).steps();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "serial-number: S-2 | serial-number: S-9 | serial-number S-2 S-9",
        "device-type: old   | device-type: new   | device-type old new",
      })
  void isOneDifference(String text, String other, String device) {
    String[] part = device.split(" ", 3);
    assertThat(changed(text, other).differences())
        .singleElement()
        .isInstanceOfSatisfying(
            Difference.Exchanged.class,
            one -> {
              assertThat(one.item()).isEqualTo("Palms");
              assertThat(one.device()).containsExactly(new ValueChange(part[0], part[1], part[2]));
            });
  }

  /** A number that is written for the first time exchanges nothing. */
  @Test
  void aNumberLearntIsNoExchange() {
    String unknown = SITE.replace("serial-number: S-2, ", "");
    SiteChange.Changed changed =
        SiteComparison.of(States.site(unknown), States.site(SITE), ExcludedAddresses.NONE);
    assertThat(changed.differences()).singleElement().isInstanceOf(Difference.ItemSet.class);
    assertThat(((FieldWork.Plan) changed.work()).steps()).isEmpty();
  }

  /** The new one is set first, with all of its card; cables and zone stay. */
  @Promise("exchange")
  @Test
  void isSetThenPutInItsPlace() {
    List<PlannedStep> steps = steps("serial-number: S-2", "serial-number: S-9");
    assertThat(steps).hasSize(2);
    assertThat(steps.get(0).work())
        .isInstanceOfSatisfying(
            Step.Prepare.class,
            one -> {
              assertThat(one.instead()).isTrue();
              assertThat(one.address()).isEqualTo(2);
              assertThat(one.settings().stream().map(ValueChange::what))
                  .containsExactly(
                      "name",
                      "role",
                      "baud",
                      "parity",
                      "stop-bits",
                      "light",
                      "vents",
                      "on-stale-readings",
                      "termination");
            });
    assertThat(steps.get(1).work())
        .isInstanceOfSatisfying(
            Step.Wire.class,
            one ->
                assertThat(one.places())
                    .containsExactly(
                        new WiringPlace(
                            "Palms",
                            List.of(
                                new FieldAction.Exchange(
                                    List.of(new ValueChange("serial-number", "S-2", "S-9")), 2)))));
    assertThat(steps).allSatisfy(one -> assertThat(one.pollingFirst()).isEmpty());
    assertThat(steps).allSatisfy(one -> assertThat(one.pollingLast()).isEmpty());
    assertThat(steps.get(1).withoutReadings()).contains("Palms", "Ferns");
    assertThat(steps.get(1).ventsStill()).contains("Palms");
    assertThat(steps.get(1).checks())
        .contains(Check.of(Check.Kind.NAME_READ_BACK, "Palms", 2))
        .anyMatch(check -> check.kind() == Check.Kind.PAIR_RESISTANCE);
    assertThat(changed("serial-number: S-2", "serial-number: S-9").consequences())
        .contains(
            new Consequence(
                Consequence.Kind.SUPERVISION, "keep the zone \"Palms\", which has the same name"));
  }

  /** All followers miss what the head unit sends, and the new one has to send it. */
  @Test
  void ofTheHeadUnitConcernsAll() {
    List<PlannedStep> steps = steps("serial-number: S-1", "serial-number: S-9");
    assertThat(((Step.Prepare) steps.get(0).work()).settings())
        .contains(
            new ValueChange("role", null, "head"),
            new ValueChange("traffic.broadcast", null, "12 registers every 5 s"));
    assertThat(steps.get(1).withoutReadings()).contains("Palms", "Ferns");
    assertThat(((Step.Wire) steps.get(1).work()).places().get(0).actions())
        .contains(new FieldAction.Fit(new ValueChange("weather-station", "wired", "wired")));
  }

  /** Another type may have other registers: nobody writes to it until it is looked at. */
  @Test
  void ofAnotherTypeStopsTheSoftware() {
    assertThat(steps("device-type: old", "device-type: new").stream().map(PlannedStep::work))
        .hasSize(4)
        .anyMatch(Step.StopSoftware.class::isInstance)
        .last()
        .isInstanceOf(Step.ResumeSoftware.class);
  }

  /** Its address as well: the zone follows. */
  @Test
  void withAnotherAddressMovesTheZone() {
    List<PlannedStep> steps =
        steps(
            "address: 2, device-type: old, serial-number: S-2",
            "address: 4, device-type: old, serial-number: S-9");
    assertThat(steps.stream().flatMap(one -> one.pollingFirst().stream()))
        .containsExactly(PollingChange.pause(PollingChange.Client.SOFTWARE, "Palms", 2));
    assertThat(steps.stream().flatMap(one -> one.pollingLast().stream()))
        .containsExactly(PollingChange.move(PollingChange.Client.SOFTWARE, "Palms", null, 4));
  }

  /** Two neighbouring lengths: the place between them is opened once. */
  @Test
  void bothEndsOfCablesAreOnePieceOfWork() {
    List<PlannedStep> steps = steps("cable-to-next: 30 m", "cable-to-next: 40 m");
    assertThat(steps).hasSize(1);
    assertThat(((Step.Wire) steps.get(0).work()).places().stream().map(WiringPlace::item))
        .containsExactly("Head House", "Palms", "Ferns");
  }
}
