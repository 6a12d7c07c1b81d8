package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.site.ExcludedAddresses;
import org.junit.jupiter.api.Test;

/** A unit and a repeater that come into a chain, and go again: every act at every place. */
class JoiningAndLeavingTest {
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
        bias: [{at: Head House, resistors: 560 ohm, supply: 5 V}]
      chain:
        - unit: Head House
          role: head
          address: 1
          comm-module: fitted
          conductors: [A, B, G]
          termination: 120 ohm
          outdoor: {light: local}
          cable-to-next: 30 m
        - unit: Palms
          role: follower
          address: 2
          comm-module: fitted
          conductors: [A, B]
          termination: 120 ohm
          outdoor: {light: head}
      """;

  private static final String FERNS =
      """
      - unit: Ferns
        role: follower
        address: 4
        comm-module: fitted
        conductors: [A, B]
        termination: none
        pair: crossed
        stub: 2 m
        outdoor: {light: head}
        on-stale-readings: close
        network: {ip: 10.0.0.4/24, gateway: 10.0.0.1}
        cable-to-next: 12 m
      """
          .indent(2);

  private static final String BOILER =
      """
      - repeater: Boiler
        termination: {in: 120 ohm, out: 150 ohm}
        cable-to-next: 5 m
      """
          .indent(2);

  private static String with(String item) {
    return SITE.replace("  - unit: Palms\n", item + "  - unit: Palms\n");
  }

  private static List<Step> steps(String before, String after) {
    FieldWork work =
        SiteComparison.of(States.site(before), States.site(after), ExcludedAddresses.NONE).work();
    assertThat(work).isInstanceOf(FieldWork.Plan.class);
    return ((FieldWork.Plan) work).steps().stream().map(PlannedStep::work).toList();
  }

  private static WiringPlace at(String item, FieldAction... acts) {
    return new WiringPlace(item, List.of(acts));
  }

  private static ValueChange set(String what, String to) {
    return new ValueChange(what, null, to);
  }

  @Test
  void aUnitJoins() {
    assertThat(steps(SITE, with(FERNS)))
        .containsExactly(
            new Step.Prepare(
                "Ferns",
                null,
                4,
                false,
                List.of(
                    set("name", "Ferns"),
                    set("role", "follower"),
                    set("baud", "9600"),
                    set("parity", "even"),
                    set("stop-bits", "1"),
                    set("light", "head"),
                    set("on-stale-readings", "close"),
                    set("network.ip", "10.0.0.4/24"),
                    set("network.gateway", "10.0.0.1"))),
            new Step.Wire(
                List.of(
                    at(
                        "Head House",
                        new FieldAction.TakeOff(true, "Palms"),
                        new FieldAction.Land(true, "Ferns", "30 m")),
                    at(
                        "Ferns",
                        new FieldAction.Land(false, "Head House", "30 m"),
                        new FieldAction.Land(true, "Palms", "12 m"),
                        new FieldAction.Fit(set("conductors", "[A, B]")),
                        new FieldAction.Fit(set("pair", "crossed")),
                        new FieldAction.Fit(set("stub", "2 m")),
                        new FieldAction.Fit(set("comm-module", "fitted")),
                        new FieldAction.SwitchOn(4)),
                    at(
                        "Palms",
                        new FieldAction.TakeOff(false, "Head House"),
                        new FieldAction.Land(false, "Ferns", "12 m"))),
                List.of("Head House", "Ferns", "Palms")));
  }

  @Test
  void aUnitLeaves() {
    assertThat(steps(with(FERNS), SITE))
        .containsExactly(
            new Step.Wire(
                List.of(
                    at(
                        "Head House",
                        new FieldAction.TakeOff(true, "Ferns"),
                        new FieldAction.Land(true, "Palms", "30 m")),
                    at(
                        "Ferns",
                        new FieldAction.TakeOff(false, "Head House"),
                        new FieldAction.TakeOff(true, "Palms"),
                        new FieldAction.TakeOut()),
                    at(
                        "Palms",
                        new FieldAction.TakeOff(false, "Ferns"),
                        new FieldAction.Land(false, "Head House", "30 m"))),
                List.of("Head House", "Ferns", "Palms")));
  }

  @Test
  void aRepeaterJoins() {
    assertThat(steps(SITE, with(BOILER)))
        .singleElement()
        .extracting(step -> ((Step.Wire) step).places().get(1))
        .isEqualTo(
            at(
                "Boiler",
                new FieldAction.Land(false, "Head House", "30 m"),
                new FieldAction.Land(true, "Palms", "5 m"),
                new FieldAction.Terminate(set("termination in", "120 ohm")),
                new FieldAction.Terminate(set("termination out", "150 ohm"))));
  }

  @Test
  void aRepeaterLeaves() {
    assertThat(steps(with(BOILER), SITE))
        .singleElement()
        .extracting(step -> ((Step.Wire) step).places().get(1))
        .isEqualTo(
            at(
                "Boiler",
                new FieldAction.TakeOff(false, "Head House"),
                new FieldAction.TakeOff(true, "Palms"),
                new FieldAction.Terminate(new ValueChange("termination in", "120 ohm", null)),
                new FieldAction.Terminate(new ValueChange("termination out", "150 ohm", null)),
                new FieldAction.TakeOut()));
  }

  /** Bias and station move with the unit that has them. */
  @Test
  void whatHangsOnAUnitIsFittedAndTakenAway() {
    String moved =
        with(FERNS)
            .replace("{at: Head House, res", "{at: Ferns, res")
            .replace("{at: Head House, read", "{at: Ferns, read");
    assertThat(acts(steps(SITE, moved), "Head House"))
        .contains(
            new FieldAction.Fit(new ValueChange("bias", "560 ohm at 5 V", null)),
            new FieldAction.Fit(new ValueChange("weather-station", "wired", null)));
    assertThat(acts(steps(SITE, moved), "Ferns"))
        .contains(
            new FieldAction.Fit(set("bias", "560 ohm at 5 V")),
            new FieldAction.Fit(set("weather-station", "wired")));
    assertThat(acts(steps(moved, SITE), "Ferns"))
        .contains(
            new FieldAction.Fit(new ValueChange("bias", "560 ohm at 5 V", null)),
            new FieldAction.Fit(new ValueChange("weather-station", "wired", null)));
  }

  private static List<FieldAction> acts(List<Step> steps, String item) {
    return steps.stream()
        .flatMap(step -> step instanceof Step.Wire wire ? wire.places().stream() : Stream.empty())
        .filter(place -> place.item().equals(item))
        .flatMap(place -> place.actions().stream())
        .toList();
  }

  /** A unit without a module is not on the line: it gets its address there, and comes last. */
  @Test
  void aUnitGetsItsModule() {
    String absent =
        SITE.replace("address: 2\n    comm-module: fitted", "address: 2\n    comm-module: absent");
    assertThat(absent).isNotEqualTo(SITE);
    assertThat(steps(absent, SITE)).hasSize(2).first().isInstanceOf(Step.Prepare.class);
    assertThat(acts(steps(absent, SITE), "Palms"))
        .containsExactly(
            new FieldAction.Fit(new ValueChange("comm-module", "absent", "fitted")),
            new FieldAction.SwitchOn(2));
    assertThat(acts(steps(SITE, absent), "Palms"))
        .containsExactly(new FieldAction.Fit(new ValueChange("comm-module", "fitted", "absent")));
    assertThat(steps(absent, absent.replace("address: 2", "address: 3")))
        .containsExactly(new Step.SetUnit("Palms", List.of(new ValueChange("address", "2", "3"))));
  }

  /** The last item changes: its terminator goes with it. */
  @Test
  void theEndOfTheLineMoves() {
    String longer =
        SITE.replaceFirst("(unit: Palms(?s:.*)termination: )120 ohm", "$1none")
            + "    cable-to-next: 8 m\n"
            + FERNS
                .replace("termination: none", "termination: 120 ohm")
                .replace("    cable-to-next: 12 m\n", "");
    assertThat(acts(steps(SITE, longer), "Palms"))
        .containsExactly(
            new FieldAction.Land(true, "Ferns", "8 m"),
            new FieldAction.Terminate(new ValueChange("termination", "120 ohm", "none")));
    assertThat(acts(steps(SITE, longer), "Ferns"))
        .startsWith(
            new FieldAction.Land(false, "Palms", "8 m"),
            new FieldAction.Terminate(set("termination", "120 ohm")));
    assertThat(acts(steps(longer, SITE), "Ferns"))
        .containsExactly(
            new FieldAction.TakeOff(false, "Palms"),
            new FieldAction.Terminate(new ValueChange("termination", "120 ohm", null)),
            new FieldAction.TakeOut());
  }
}
