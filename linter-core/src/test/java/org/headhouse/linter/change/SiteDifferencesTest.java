package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.site.ItemKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every key that is compared, and whether the line has to be proved again because of it. */
class SiteDifferencesTest {
  private static final String SITE =
      """
      format: 1
      site: example
      title: Example
      customer: growers
      stage: commissioned
      weather-station: {at: Head House, readings: [light], maximum-age: 30 s}
      line:
        baud: 9600
        parity: even
        stop-bits: 1
        cable: {gauge: 24 AWG, shielded: true, impedance: 120 ohm}
        bias: [{at: Head House, resistors: 560 ohm, supply: 5 V}]
        traffic: {broadcast: {registers: 12, every: 5 s}}
      chain:
        - unit: Head House
          role: head
          address: 1
          comm-module: fitted
          conductors: [A, B, G]
          termination: 120 ohm
          outdoor: {light: local}
          cable-to-next: 10 m
        - repeater: Boiler
          termination: {in: 120 ohm, out: 120 ohm}
          cable-to-next: 20 m
        - unit: Palms
          role: follower
          address: 2
          device-type: eight-way
          firmware: "3.1"
          comm-module: built-in
          conductors: [A, B]
          termination: none
          stub: 1 m
          outdoor: {light: head, rain: none}
          vents: roof
          on-stale-readings: hold
          network: {ip: 10.0.0.2/24, gateway: 10.0.0.1}
          cable-to-next: 30 m
        - {unit: Cacti, role: follower, address: 3, termination: 120 ohm}
      supervision: {link: serial, zones: [Palms]}
      commissioning: {date: 2026-03-14}
      """;

  private static List<Difference> differences(String text, String other) {
    assertThat(SITE).contains(text);
    return SiteDifferences.between(States.site(SITE), States.site(SITE.replace(text, other)));
  }

  /** The kind, the item, what it is, from and to. */
  private static String reported(Difference difference) {
    return difference
        .toString()
        .replaceAll("ValueChange\\[|[a-zA-Z]+=|]", "")
        .replaceFirst("\\[", " ");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "site: example             | site: sample               | false | SiteSet site, example, sample",
        "title: Example            | title: Sample              | false | SiteSet title, Example, Sample",
        "customer: growers         | client: growers            | false | SiteSet customer, growers, null",
        "stage: commissioned       | stage: planned             | false | SiteSet stage, commissioned, planned",
        "at: Head House, readings  | at: Palms, readings        | true  | SiteSet weather-station.at, Head House, Palms",
        "readings: [light]         | readings: [rain]           | true  | SiteSet weather-station.readings, [light, [rain",
        "maximum-age: 30 s         | maximum-age: 1 min         | false | SiteSet weather-station.maximum-age, 30 s, 1 min",
        "link: serial              | link: ethernet             | true  | SiteSet supervision.link, serial, ethernet",
        "zones: [Palms]            | zones: [Cacti]             | false | SiteSet supervision.zones, [Palms, [Cacti",
        "date: 2026-03-14          | date: 2026-03-15           | false | SiteSet commissioning.date, 2026-03-14, 2026-03-15",
        "baud: 9600                | baud: 19200                | true  | LineSet baud, 9600, 19200",
        "parity: even              | parity: odd                | true  | LineSet parity, even, odd",
        "stop-bits: 1              | stop-bits: 2               | true  | LineSet stop-bits, 1, 2",
        "gauge: 24 AWG             | gauge: 22 AWG              | true  | LineSet cable.gauge, 24 AWG, 22 AWG",
        "shielded: true            | shielded: false            | true  | LineSet cable.shielded, true, false",
        "impedance: 120 ohm        | impedance: 100 ohm         | true  | LineSet cable.impedance, 120 ohm, 100 ohm",
        "registers: 12             | registers: 6               | true  | LineSet traffic.broadcast.registers, 12, 6",
        "every: 5 s                | every: 1 s                 | true  | LineSet traffic.broadcast.every, 5 s, 1 s",
        "traffic:                  | trafic:                    | true  | LineSet traffic.broadcast, 12 registers every 5 s, null",
        "resistors: 560 ohm        | resistors: 470 ohm         | true  | Rebiased Head House, bias, 560 ohm at 5 V, 470 ohm at 5 V",
        "at: Head House, resistors | at: Nowhere, resistors     | true  | Rebiased Head House, bias, 560 ohm at 5 V, null",
        "unit: Palms               | unit: Ferns                | false | Renamed Ferns, Palms",
        "repeater: Boiler          | repeater: East Boiler      | false | Renamed East Boiler, Boiler",
        "address: 2                | address: 9                 | true  | Readdressed Palms, 2, 9",
        "role: head                | role: follower             | true  | RoleChanged Head House, role, head, follower",
        "comm-module: built-in     | comm-module: fitted        | true  | Rewired Palms, comm-module, built-in, fitted",
        "conductors: [A, B]        | conductors: [A]            | true  | Rewired Palms, conductors, [A, B, [A",
        "stub: 1 m                 | stub: 2 m                  | true  | Rewired Palms, stub, 1 m, 2 m",
        "vents: roof               | pair: crossed              | true  | Rewired Palms, pair, straight, crossed; ItemSet Palms, vents, roof, null",
        "cable-to-next: 20 m       | cable-to-next: 25 m        | true  | Rewired Boiler, cable-to-next, 20 m, 25 m",
        "termination: none         | termination: 120 ohm       | true  | Terminated Palms, termination, none, 120 ohm",
        "out: 120 ohm              | out: none                  | true  | Terminated Boiler, termination out, 120 ohm, none",
        "light: head               | light: local               | true  | Resourced Palms, light, head, local",
        "rain: none                | humidity: none             | true  | Resourced Palms, humidity, null, none; Resourced Palms, rain, none, null",
        "device-type: eight-way    | type: eight-way            | true  | ItemSet Palms, device-type, eight-way, null",
        "vents: roof               | vents: side                | true  | ItemSet Palms, vents, roof, side",
        "on-stale-readings: hold   | on-stale-readings: close   | true  | ItemSet Palms, on-stale-readings, hold, close",
        "ip: 10.0.0.2/24           | ip: 10.0.0.3/24            | false | ItemSet Palms, network.ip, 10.0.0.2/24, 10.0.0.3/24",
        "gateway: 10.0.0.1         | gateway: 10.0.0.9          | false | ItemSet Palms, network.gateway, 10.0.0.1, 10.0.0.9",
        "firmware: \"3.1\"         | firmware: \"3.2\"          | true  | ItemSet Palms, firmware, 3.1, 3.2",
        "address: 3                | address: 3, vents: none       | false | ItemSet Cacti, vents, null, none",
        "address: 3                | address: 3, vents: side       | true  | ItemSet Cacti, vents, null, side",
        "address: 3                | address: 3, serial-number: S1 | false | ItemSet Cacti, serial-number, null, S1",
        "address: 3                | address: 3, stale-after: 60 s | true  | ItemSet Cacti, stale-after, null, 60 s",
        "zones: [Palms]            | zones: [Palms], polling: {every: 20 s} | true | SiteSet supervision.polling.every, null, 20 s",
        "maximum-age: 30 s         | maximum-age: 30 s, close-within: 3 min | false | SiteSet weather-station.close-within, null, 3 min",
        "maximum-age: 30 s         | maximum-age: 30 s, averaging: 10 s | true | SiteSet weather-station.averaging, null, 10 s",
        "address: 3                | address: 3, run-to-next: between-buildings | true | Rewired Cacti, run-to-next, inside, between-buildings",
        "address: 3                | address: 3, surge-protection-to-next: fitted | true | Rewired Cacti, surge-protection-to-next, none, fitted",
      })
  void oneEdit(String text, String other, boolean proof, String expected) {
    List<Difference> differences = differences(text, other);
    assertThat(differences.stream().map(SiteDifferencesTest::reported))
        .containsExactly(expected.split("; ", -1));
    assertThat(ReprovingCheck.isDue(differences)).isEqualTo(proof);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "network: {ip: 10.0.0.2/24, gateway: 10.0.0.1} | mains: {} | ItemSet Palms, network.ip, 10.0.0.2/24, null; ItemSet Palms, network.gateway, 10.0.0.1, null",
        "outdoor: {light: head, rain: none} | indoor: {}           | Resourced Palms, light, head, null; Resourced Palms, rain, none, null",
        "supervision:                       | overview:            | SiteSet supervision.link, serial, null; SiteSet supervision.zones, [Palms, null",
        "cable: {                           | wire: {              | LineSet cable.gauge, 24 AWG, null; LineSet cable.shielded, true, null; LineSet cable.impedance, 120 ohm, null",
        "bias: [{at                         | no-bias: [{at        | Rebiased Head House, bias, 560 ohm at 5 V, null",
        // What is not understood, and what hangs on it, is not reported as changed.
        "line:                              | lines:               | Rebiased Head House, bias, 560 ohm at 5 V, null",
        "outdoor: {light: head, rain: none} | outdoor: [head]      |",
        "network: {ip: 10.0.0.2/24          | network: [           |",
      })
  void aWholePart(String text, String other, String expected) {
    String edited = other.endsWith("[") ? "network: {ip: 10" : other;
    assertThat(differences(text, edited).stream().map(SiteDifferencesTest::reported))
        .containsExactlyElementsOf(
            expected == null ? List.of() : List.of(expected.split("; ", -1)));
  }

  @Test
  void itemsThatComeAndGo() {
    String boiler =
        "  - repeater: Boiler\n    termination: {in: 120 ohm, out: 120 ohm}\n    cable-to-next: 20 m\n";
    List<Difference> gone = differences(boiler, "");
    assertThat(gone)
        .containsExactly(
            new Difference.Rewired("Head House", new ValueChange("next item", "Boiler", "Palms")),
            new Difference.Removed("Boiler", ItemKind.REPEATER, "Head House"),
            new Difference.Rewired(
                "Palms", new ValueChange("previous item", "Boiler", "Head House")));
    List<Difference> come =
        SiteDifferences.between(
            States.site(SITE),
            States.site(
                SITE.replace(
                    "chain:\n", "chain:\n  - {unit: Gate, role: follower, address: 9}\n")));
    assertThat(come)
        .containsExactly(
            new Difference.Added("Gate", ItemKind.UNIT, null),
            new Difference.Rewired("Head House", new ValueChange("previous item", null, "Gate")));
    assertThat(ItemKind.UNIT.word()).isEqualTo("unit");
    assertThat(ItemKind.REPEATER.word()).isEqualTo("repeater");
  }
}
