package org.headhouse.linter.baseline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.EditedSite;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Results that put several units, readings or sides together, or stand at one place: with one of
 * two cases in the baseline, the other is new; once one of both is mended, the other is not.
 */
class NewCasesTest {
  private static final String FILE = "example.yaml";
  private static final String LIVE = "site.stage = commissioned";
  private static final String BROADCAST = "line.traffic = {broadcast: {registers: 12, every: 5 s}}";

  private static final String TYPES =
      """
      format: 1
      device-types:
        - {id: plain, title: Controller, unit-load: 1/8, idle-bias: not-needed, other-clients: waits}
        - {id: box, title: Box, unit-load: 1/8}
        - {id: needing, title: Needing, unit-load: 1/8, idle-bias: needed}
        - {id: isolated, title: Isolated, unit-load: 1/8, idle-bias: not-needed, isolated: true}
        - {id: joined, title: Joined, unit-load: 1/8, idle-bias: not-needed, isolated: false}
        - {id: heavy, title: Heavy, unit-load: 20, idle-bias: not-needed}
        - {id: slow, title: Slow, unit-load: 1/8, idle-bias: not-needed, baud-rates: [1200]}
        - {id: odd, title: Odd, unit-load: 1/8, idle-bias: not-needed, parities: [odd]}
      """;

  @TempDir private Path folder = Path.of("");

  /**
   * A rule with two cases in one site.
   *
   * @param units of the two, where a suppression can be for one of them
   * @param always edits of the site in any state
   * @param swaps whether the second takes the first away
   * @param grows whether the second is none without the first
   */
  private record Pair(
      String rule,
      String first,
      String second,
      List<String> units,
      List<String> always,
      boolean swaps,
      boolean grows) {
    String site(boolean hasFirst, boolean hasSecond) {
      List<String> edits = new ArrayList<>(always);
      edits.addAll(hasFirst ? List.of(first.split("; ", -1)) : List.of());
      edits.addAll(hasSecond ? List.of(second.split("; ", -1)) : List.of());
      return new EditedSite(edits.toArray(String[]::new)).toString();
    }

    Pair of(String... both) {
      return new Pair(rule, first, second, List.of(both), always, swaps, grows);
    }

    /** The second case is instead of the first. */
    Pair swapped() {
      return new Pair(rule, first, second, units, always, true, grows);
    }

    /** The second case is one with the first only. */
    Pair growing() {
      return new Pair(rule, first, second, units, always, swaps, true);
    }

    Pair with(String... edits) {
      return new Pair(rule, first, second, units, List.of(edits), swaps, grows);
    }

    @Override
    public String toString() {
      return rule + ": " + first + " | " + second;
    }
  }

  private static Pair pair(String rule, String first, String second) {
    return new Pair(rule, first, second, List.of(), List.of(), false, false);
  }

  static Stream<Pair> pairs() {
    return Stream.of(
        pair(
                "outdoor.not-from-head",
                "Bay 2.outdoor = {light: head}",
                "Bay 2.outdoor = {humidity: none}")
            .with("Bay 2.outdoor = {light: head, temperature: head}"),
        pair("outdoor.not-from-head", "Bay 2.outdoor = -", "Bay 3.outdoor = -")
            .of("Bay 2", "Bay 3"),
        pair(
            "outdoor.not-from-head",
            "Bay 2.outdoor = local",
            "Bay 2.outdoor = local; site.weather-station = {at: Head House, readings: [light, temperature, rain]}"),
        pair(
            "outdoor.head-not-local",
            "Head House.outdoor = {temperature: local}",
            "Head House.outdoor = {humidity: none}"),
        pair("cable.length-unknown", "Bay 2.cable-to-next = -", "Head House.cable-to-next = -")
            .of("Bay 2", "Head House"),
        pair("cable.length-unknown", "Head House.cable-to-next = -", "Bay 3.cable-to-next = -")
            .of("Head House", "Bay 3"),
        pair("bias.missing", "Bay 3.device-type = needing", "Bay 4.device-type = needing")
            .of("Bay 3", "Bay 4"),
        pair("bias.missing", "Bay 3.device-type = box", "Bay 4.device-type = box")
            .of("Bay 3", "Bay 4"),
        pair("firmware.mixed", "Bay 2.firmware = '3.1'", "Bay 4.firmware = '3.1'")
            .of("Bay 2", "Bay 4")
            .with("Head House.firmware = '3.2'", "Bay 3.firmware = '3.2'"),
        pair("serial.unsupported", "Bay 2.device-type = slow", "Bay 3.device-type = slow")
            .of("Bay 2", "Bay 3"),
        pair("serial.unsupported", "Bay 2.device-type = odd", "Bay 3.device-type = slow")
            .of("Bay 2", "Bay 3"),
        pair(
            "termination.undeclared",
            "Boiler Room.termination = {in: 120 ohm}",
            "Boiler Room.termination = {}"),
        pair(
                "termination.undeclared",
                "Boiler Room.termination = {in: 120 ohm}",
                "Boiler Room.termination = {out: 120 ohm}")
            .swapped(),
        pair("conductors.common", "Bay 2.conductors = [A, B]", "Bay 3.conductors = [A, B]")
            .of("Bay 2", "Bay 3")
            .with(
                "Head House.conductors = [A, B, G, C]",
                "Bay 2.conductors = [A, B, C]",
                "Bay 3.conductors = [A, B, C]",
                "Bay 4.conductors = [A, B, C]"),
        pair("conductors.common", "Bay 2.device-type = isolated", "Bay 3.device-type = isolated")
            .of("Bay 2", "Bay 3"),
        pair(
                "conductors.ground",
                "Bay 2.conductors = [A, B, G]",
                "Bay 2.conductors = [A, B]; Bay 3.conductors = [A, B, G]")
            .with("Head House.conductors = [A, B]")
            .swapped(),
        pair(
                "run.not-isolated",
                "Head House.run-to-next = between-buildings",
                "Bay 3.run-to-next = between-buildings")
            .of("Head House", "Bay 3")
            .with(
                "Head House.device-type = joined",
                "Bay 2.device-type = joined",
                "Bay 4.device-type = joined"),
        pair(
                "address.order",
                "Bay 2.address = 3; Bay 3.address = 2",
                "Bay 5.address = 6; Bay 6.address = 5")
            .of("Bay 3", "Bay 6")
            .with(
                "Bay 4.cable-to-next = 5 m",
                "Bay 4.address = 4",
                "Bay 5.role = follower",
                "Bay 5.address = 5",
                "Bay 5.cable-to-next = 5 m",
                "Bay 6.role = follower",
                "Bay 6.address = 6"),
        pair("address.duplicate", "Head House.address = 4", "Bay 2.address = 4"),
        pair(
                "network.duplicate-ip",
                "Bay 2.network = {ip: 10.0.0.4/24}",
                "Bay 3.network = {ip: 10.0.0.4/24}")
            .with("Bay 4.network = {ip: 10.0.0.4/24}"),
        pair("outdoor.age-unknown", "Bay 2.close-time = -", "Bay 3.close-time = -")
            .of("Bay 2", "Bay 3")
            .with(
                "site.weather-station = {at: Head House, readings: [light, temperature, wind-speed], averaging: 10 s, close-within: 3 min}",
                BROADCAST,
                "Bay 2.vents = roof",
                "Bay 2.on-stale-readings = close",
                "Bay 2.close-time = 60 s",
                "Bay 2.stale-after = 30 s",
                "Bay 3.vents = roof",
                "Bay 3.on-stale-readings = close",
                "Bay 3.close-time = 60 s",
                "Bay 3.stale-after = 30 s"),
        pair(
                "traffic.two-clients",
                "Dosing Rig.polled = {by: head, registers: 4, every: 1 min}",
                "Mixing Rig.polled = {by: head, registers: 4, every: 1 min}")
            .with(
                "site.supervision = {link: serial, zones: [Head House, Bay 2, Bay 3, Bay 4]}",
                "Head House.device-type = box",
                "Bay 4.cable-to-next = 5 m",
                "Dosing Rig.address = 57",
                "Dosing Rig.cable-to-next = 5 m",
                "Mixing Rig.address = 58"),
        pair("commissioning.response-unseen", "Bay 2.vents = roof", "Bay 3.vents = roof")
            .of("Bay 2", "Bay 3")
            .with(
                LIVE,
                "site.commissioning = {date: 2026-03-14, by: R.O.}",
                "Head House.vents = none",
                "Bay 2.vents = none",
                "Bay 3.vents = none",
                "Bay 4.vents = none"),
        pair(
                "commissioning.response-unseen",
                "site.commissioning = {date: 2026-03-14, by: R.O., stale-response-seen: [Bay 2]}",
                "site.commissioning = {date: 2026-03-14, by: R.O.}")
            .with(
                LIVE,
                "Head House.vents = none",
                "Bay 2.vents = roof",
                "Bay 3.vents = none",
                "Bay 4.vents = none"),
        pair(
                "commissioning.unit-unseen",
                "site.commissioning = {date: 2026-03-14, by: R.O., outdoor-readings-seen: [Bay 3, Bay 4]}",
                "site.commissioning = {date: 2026-03-14, by: R.O., outdoor-readings-seen: [Bay 4]}")
            .of("Bay 2", "Bay 3")
            .with(LIVE),
        pair(
                "commissioning.unmeasured",
                "site.commissioning = {date: 2026-03-14, by: R.O., measured: {pair-resistance: 62 ohm, elsewhere: [{at: Bay 4, pair-resistance: 62 ohm}, {at: Boiler Room, side: in, pair-resistance: 62 ohm}]}}",
                "site.commissioning = {date: 2026-03-14, by: R.O., measured: {pair-resistance: 62 ohm, elsewhere: [{at: Bay 4, pair-resistance: 62 ohm}]}}")
            .with(LIVE),
        pair(
                "supervision.zone-missing",
                "site.supervision = {link: serial, zones: [Head House, Bay 3, Bay 4]}",
                "site.supervision = {link: serial, zones: [Head House, Bay 4]}")
            .of("Bay 2", "Bay 3"),
        pair(
                "cable.too-long",
                "Bay 3.cable-to-next = 1300 m",
                "Bay 4.cable-to-next = 5 m; Bay 5.role = follower")
            .growing(),
        pair(
                "segment.overloaded",
                "Bay 3.device-type = heavy; Bay 4.device-type = heavy",
                "Bay 4.cable-to-next = 5 m; Bay 5.role = follower")
            .growing());
  }

  private static List<Result> fresh(String rule, CheckReport report) {
    assertThat(report.notifications()).isEmpty();
    return report.at(Level.NOTE).stream().filter(one -> one.rule().equals(rule)).toList();
  }

  private List<Result> fresh(Pair pair, String known, String later) throws IOException {
    OldDebt debt = new OldDebt(folder, null, SiteInput.text("device-types.yaml", TYPES));
    debt.take(Map.of(FILE, known));
    return fresh(pair.rule(), debt.check(Map.of(FILE, later)));
  }

  @ParameterizedTest
  @MethodSource("pairs")
  void whatComesLaterIsNew(Pair pair) throws IOException {
    String sound = pair.site(false, false);
    assertThat(fresh(pair, sound, sound)).isEmpty();
    assertThat(fresh(pair, sound, pair.site(true, false))).isNotEmpty();
    assertThat(fresh(pair, pair.site(true, false), pair.site(true, true))).isNotEmpty();
    if (!pair.grows()) {
      assertThat(fresh(pair, pair.site(true, false), pair.site(false, true))).isNotEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("pairs")
  void whatIsLeftIsKnown(Pair pair) throws IOException {
    String both = pair.site(true, true);
    assertThat(fresh(pair, both, both)).isEmpty();
    assertThat(fresh(pair, both, pair.site(false, true))).isEmpty();
    if (!pair.swaps()) {
      assertThat(fresh(pair, both, pair.site(true, false))).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("pairs")
  void aSuppressionIsForItsUnit(Pair pair) throws IOException {
    if (pair.units().isEmpty()) {
      return;
    }
    String first = pair.units().get(0);
    String second = pair.units().get(1);
    assertThat(accepted(pair, pair.site(true, false), first)).isEmpty();
    assertThat(accepted(pair, pair.site(true, true), first)).containsExactly(pair.rule());
    assertThat(accepted(pair, pair.site(true, true), second)).containsExactly(pair.rule());
    assertThat(accepted(pair, pair.site(true, true), first, second)).isEmpty();
  }

  /** The rules that are left of the pair's and those on suppressions. */
  private List<String> accepted(Pair pair, String site, String... units) throws IOException {
    StringBuilder text = new StringBuilder(site).append("suppressions:\n");
    for (String unit : units) {
      text.append(
          "  - {rule: " + pair.rule() + ", unit: " + unit + ", justification: Accepted.}\n");
    }
    OldDebt debt = new OldDebt(folder, null, SiteInput.text("device-types.yaml", TYPES));
    debt.take(Map.of());
    return debt.check(Map.of(FILE, text.toString())).at(Level.NOTE).stream()
        .map(Result::rule)
        .filter(rule -> rule.equals(pair.rule()) || rule.startsWith("suppression."))
        .distinct()
        .toList();
  }

  /**
   * Addresses of the four units: as many may be missing before each as were, whichever they are.
   */
  @ParameterizedTest
  @CsvSource({
    "1 3 4 5, 1 3 4 5, false",
    "1 3 4 5, 1 3 4 6, true",
    "1 3 4 5, 1 4 5 6, true",
    "1 3 4 6, 1 2 3 5, false",
    "1 3 4 6, 1 2 4 6, true",
    "1 2 3 5, 1 2 4 5, true",
    "1 2 3 9, 1 2 3 5, false"
  })
  void gaps(String known, String later, boolean isNew) throws IOException {
    Pair gap = pair("address.gap", "", "");
    assertThat(fresh(gap, numbered(known), numbered(later)).isEmpty()).isNotEqualTo(isNew);
  }

  private static String numbered(String addresses) {
    String[] each = addresses.split(" ", -1);
    return new EditedSite(
            "Bay 2.address = " + each[1],
            "Bay 3.address = " + each[2],
            "Bay 4.address = " + each[3])
        .toString();
  }
}
