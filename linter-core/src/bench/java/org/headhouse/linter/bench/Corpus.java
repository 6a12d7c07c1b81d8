package org.headhouse.linter.bench;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Sites that are made up, each different, all without a fault. */
final class Corpus {
  static final String DEVICE_TYPES =
      """
      format: 1
      device-types:
        - {id: eight-way, unit-load: 1/8, name-limit: 16, rise-time: 100 ns, baud-rates: [9600, 19200]}
        - {id: sixteen-way, unit-load: 1/8, name-limit: 20, baud-rates: [9600, 19200, 38400]}
      """;

  private static final String FROM_HEAD =
      "{light: head, temperature: head, wind-speed: head, wind-direction: head, rain: head}";

  private Corpus() {}

  /** Some sites of a number of units, as the bytes of their files. */
  static List<byte[]> sites(int number, int units) {
    return sites(0, number, units);
  }

  /** Some sites, counted from a first one. */
  static List<byte[]> sites(int first, int number, int units) {
    Random random = new Random(485);
    List<byte[]> sites = new ArrayList<>();
    for (int i = first; i < first + number; i++) {
      sites.add(site("site-" + i, units, random).getBytes(UTF_8));
    }
    return sites;
  }

  private static String site(String id, int units, Random random) {
    StringBuilder text = new StringBuilder(units * 260 + 1000);
    text.append(
        """
        # A line of the benchmark.
        format: 1
        site: %s
        title: Nursery %s
        stage: planned

        weather-station:
          at: House 1
          readings: [light, temperature, wind-speed, wind-direction, rain]
          maximum-age: 60 s

        line:
          baud: 9600
          parity: even
          stop-bits: 1
          cable: {gauge: 22 AWG, shielded: true, impedance: 120 ohm}
          bias:
            - {at: House 1, resistors: 470 ohm, supply: 5 V}
          traffic:
            broadcast: {registers: 12, every: 10 s}

        chain:
          - unit: House 1
            role: head
            address: 1
            device-type: eight-way
            comm-module: fitted
            conductors: [A, B, G]
            termination: 120 ohm + 1 nF
            outdoor: {light: local, temperature: local, wind-speed: local, wind-direction: local, rain: local}
            vents: roof
            on-stale-readings: close
            cable-to-next: %d m
        """
            .formatted(id, id, 2 + random.nextInt(3)));
    for (int unit = 2; unit <= units; unit++) {
      text.append(follower(unit, unit == units, random));
    }
    return text.toString();
  }

  private static String follower(int unit, boolean last, Random random) {
    String type = random.nextInt(5) == 0 ? "sixteen-way" : "eight-way";
    String text =
        """
          - unit: House %d
            role: follower
            address: %d
            device-type: %s
            comm-module: fitted
            conductors: [A, B]
            termination: %s
            outdoor: %s
        """
            .formatted(unit, unit, type, last ? "120 ohm + 1 nF" : "none", FROM_HEAD);
    return last
        ? text
        : text + String.format(Locale.ROOT, "    cable-to-next: %d m%n", 2 + random.nextInt(3));
  }
}
