package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Ordinary lines as they are built have no result at all, not even a note. Each of them was thought
 * through by hand (common practice, no source): bias by the worst corner, one ground, commons where
 * interfaces are isolated, terminators at the ends.
 */
class SoundSitesTest {
  private static final String TYPES =
      """
      format: 1
      device-types:
        - {id: old, unit-load: 1, idle-bias: needed, isolated: false, comm-module: needed, parities: [even, none]}
        - {id: half, unit-load: 1/2, idle-bias: needed, isolated: false}
        - {id: fail-safe, unit-load: 1/8, idle-bias: not-needed, isolated: false, baud-rates: [9600, 19200]}
        - {id: isolated, unit-load: 1/8, idle-bias: not-needed, isolated: true, rise-time: 100 ns}
        - {id: waiting, unit-load: 1/8, idle-bias: not-needed, other-clients: waits, processing: 40 ms}
      """;

  private static final String VENTS = "vents: roof\non-stale-readings: close\n";

  private static final String BIASED = "resistors: 510 ohm, supply: 5 V";

  private static String site(String line, String chain) {
    return """
        format: 1
        site: example
        stage: planned
        weather-station: {at: Head House, readings: [light, wind-speed]}
        line:
          baud: 9600
          parity: even
          stop-bits: 1
        %s
        chain:
        %s"""
        .formatted(line.stripTrailing().indent(2).stripTrailing(), chain.indent(2));
  }

  private static String cable(String gauge) {
    return "cable: {gauge: " + gauge + ", shielded: true, impedance: 120 ohm}\n";
  }

  private static String bias(String... at) {
    return "bias:\n"
        + Stream.of(at)
            .map(item -> "  - {at: " + item + ", " + BIASED + "}\n")
            .reduce("", String::concat);
  }

  /** The first is the head unit. */
  private static String unit(int address, String type, String conductors, String more) {
    boolean head = address == 1;
    return """
        - unit: %s
          role: %s
          address: %d
          device-type: %s
          comm-module: fitted
          conductors: [%s]
          outdoor: {light: %4$s, wind-speed: %4$s}
        """
            .replace("%4$s", head ? "local" : "head")
            .formatted(
                head ? "Head House" : "Bay " + address,
                head ? "head" : "follower",
                address,
                type,
                conductors)
        + more.strip().indent(2);
  }

  private static String end(String termination) {
    return "termination: " + termination;
  }

  private static String to(String termination, String cable) {
    return end(termination) + "\ncable-to-next: " + cable;
  }

  private static String between(String termination, String cable) {
    return to(termination, cable)
        + "\nrun-to-next: between-buildings\nsurge-protection-to-next: fitted";
  }

  static Stream<Arguments> sites() {
    return Stream.of(
        Arguments.of(
            "with bias",
            site(
                cable("24 AWG") + bias("Head House"),
                unit(1, "old", "A, B, G", to("120 ohm", "40 m"))
                    + unit(2, "old", "A, B", to("none", "35 m"))
                    + unit(3, "old", "A, B", end("120 ohm")))),
        Arguments.of(
            "without bias, all receivers fail-safe",
            site(
                cable("24 AWG"),
                unit(1, "fail-safe", "A, B, G", to("120 ohm", "60 m"))
                    + unit(2, "fail-safe", "A, B", end("120 ohm")))),
        Arguments.of(
            "isolated, with a common to every unit, between buildings",
            site(
                cable("24 AWG"),
                unit(1, "isolated", "A, B, C, G", between("120 ohm", "80 m"))
                    + unit(2, "isolated", "A, B, C", end("120 ohm")))),
        Arguments.of(
            "not isolated, in one building",
            site(
                cable("0.5 mm2") + bias("Head House"),
                unit(1, "fail-safe", "A, B, G", to("120 ohm", "20 m"))
                    + unit(2, "old", "A, B", end("120 ohm")))),
        Arguments.of(
            "with a converter before the head unit",
            site(
                cable("24 AWG") + bias("Head House"),
                "- converter: Office\n"
                    + to("120 ohm", "12 m").indent(2)
                    + unit(1, "old", "A, B, G", to("none", "40 m"))
                    + unit(2, "old", "A, B", end("120 ohm")))),
        Arguments.of(
            "with other equipment on the pair",
            site(
                cable("24 AWG") + bias("Head House"),
                unit(1, "old", "A, B, G", to("120 ohm", "40 m"))
                    + "- equipment: Dosing Rig\n"
                    + ("address: 57\nbroadcasts: ignored\n" + to("none", "20 m")).indent(2)
                    + unit(2, "old", "A, B", end("120 ohm")))),
        Arguments.of(
            "with an isolated repeater between two buildings",
            site(
                cable("24 AWG") + bias("Head House", "Road"),
                unit(1, "old", "A, B, G", between("120 ohm", "70 m"))
                    + "- repeater: Road\n"
                    + ("isolated: true\ntermination: {in: 120 ohm, out: 120 ohm}\n"
                            + "cable-to-next: 30 m")
                        .indent(2)
                    + unit(2, "old", "A, B, G", to("none", "30 m"))
                    + unit(3, "old", "A, B", end("120 ohm")))),
        Arguments.of(
            "compact, in one cabinet",
            site(
                cable("24 AWG") + bias("Head House"),
                unit(1, "fail-safe", "A, B, G", to("120 ohm", "1 m"))
                    + unit(2, "fail-safe", "A, B", to("none", "1 m"))
                    + unit(3, "fail-safe", "A, B", end("120 ohm")))),
        Arguments.of(
            "long, with terminators that draw nothing while the line is idle",
            site(
                cable("22 AWG") + bias("Head House").replace("510 ohm", "620 ohm"),
                unit(1, "fail-safe", "A, B, G", to("120 ohm + 1 nF", "330 m"))
                    + unit(2, "fail-safe", "A, B", to("none", "330 m"))
                    + unit(3, "fail-safe", "A, B", end("120 ohm + 1 nF")))),
        Arguments.of(
            "in feet, at 19200 bit/s",
            site(
                    cable("24 AWG") + bias("Head House"),
                    unit(1, "fail-safe", "A, B, G", to("120 ohm", "120 ft"))
                        + unit(2, "fail-safe", "A, B", end("120 ohm")))
                .replace("baud: 9600", "baud: 19200")),
        Arguments.of(
            "with a time until the vents are shut, and software that asks the head unit",
            site(
                        cable("24 AWG")
                            + bias("Head House")
                            + "traffic: {broadcast: {registers: 12, every: 5 s}}\n",
                        unit(1, "old", "A, B, G", vents("") + to("120 ohm", "40 m"))
                            + unit(2, "old", "A, B", "vents: none\n" + to("none", "40 m"))
                            + unit(3, "old", "A, B", vents("stale-after: 60 s\n") + end("120 ohm")))
                    .replace(
                        "wind-speed]}",
                        "wind-speed], maximum-age: 15 s, averaging: 10 s, close-within: 3 min}")
                + """
                supervision:
                  link: through-head
                  zones: [Head House, Bay 2, Bay 3]
                  polling: {every: 20 s, registers: 60, timeout: 1 s, retries: 1}
                """),
        Arguments.of(
            "with software on the pair, a head unit that waits for it, and equipment that both ask",
            site(
                    cable("24 AWG")
                        + bias("Head House")
                        + "traffic: {broadcast: {registers: 12, every: 5 s}}\n",
                    "- converter: Office\n"
                        + ("latency: 16 ms\n" + to("120 ohm", "12 m")).indent(2)
                        + unit(1, "waiting", "A, B, G", to("none", "40 m"))
                        + meter("Water Meter", 57, "head")
                        + meter("Dosing Rig", 58, "supervision")
                        + unit(2, "waiting", "A, B", end("120 ohm")))
                + """
                supervision:
                  link: serial
                  at: Office
                  zones: [Head House, Bay 2]
                  polling: {every: 20 s, registers: 60, timeout: 300 ms, retries: 1}
                """),
        Arguments.of(
            "with equipment at the end, and a common to everything",
            site(
                cable("0.75 mm2") + bias("Head House"),
                unit(1, "fail-safe", "A, B, C, G", to("120 ohm", "60 m"))
                    + unit(2, "fail-safe", "A, B, C", to("none", "15 m"))
                    + "- equipment: Water Meter\n"
                    + ("address: 240\nconductors: [A, B, C]\nbroadcasts: ignored\n"
                            + "isolated: true\n"
                            + end("120 ohm"))
                        .indent(2))),
        Arguments.of(
            "with two repeaters, and bias at each side that needs one",
            site(
                cable("24 AWG")
                    + bias("Head House", "Road", "Field").replace("Field,", "Field, side: out,"),
                unit(1, "old", "A, B, G", to("120 ohm", "90 m"))
                    + repeater("Road", "40 m")
                    + unit(2, "old", "A, B", to("none", "40 m"))
                    + repeater("Field", "40 m")
                    + unit(3, "old", "A, B", end("120 ohm")))),
        Arguments.of(
            "with bias in the middle, and weak pulls that a unit has built in",
            site(
                cable("24 AWG")
                    + bias("Bay 2")
                    + "  - {at: Bay 3, resistors: 10 kohm, supply: 5 V}\n",
                unit(1, "old", "A, B, G", to("120 ohm", "150 m"))
                    + unit(2, "old", "A, B", to("none", "150 m"))
                    + unit(3, "old", "A, B", end("120 ohm")))),
        Arguments.of(
            "without parity, with terminators of 150 ohm and a branch of 1 m",
            site(
                    cable("24 AWG") + bias("Head House"),
                    unit(1, "isolated", "A, B, C, G", to("150 ohm", "40 m"))
                        + unit(2, "isolated", "A, B, C", "stub: 1 m\n" + to("none", "40 m"))
                        + unit(3, "isolated", "A, B, C", end("150 ohm")))
                .replace("parity: even", "parity: none")
                .replace("stop-bits: 1", "stop-bits: 2")),
        Arguments.of(
            "with thirty heavy units in one house",
            site(
                cable("18 AWG") + bias("Head House").replace("510 ohm", "560 ohm"),
                unit(1, "half", "A, B, G", to("120 ohm", "20 ft"))
                    + IntStream.range(2, 30)
                        .mapToObj(one -> unit(one, "half", "A, B", to("none", "20 ft")))
                        .collect(Collectors.joining())
                    + unit(30, "half", "A, B", end("120 ohm")))),
        Arguments.of(
            "commissioned",
            site(
                        cable("24 AWG") + bias("Head House"),
                        unit(1, "old", "A, B, G", "vents: none\n" + to("120 ohm", "40 m"))
                            + unit(2, "old", "A, B", "vents: none\n" + end("120 ohm")))
                    .replace("planned", "commissioned")
                + """
                commissioning:
                  date: 2026-03-14
                  by: R.O.
                  measured: {pair-resistance: 60.5 ohm, idle-voltage: 0.27 V, elsewhere: [{at: Bay 2, pair-resistance: 60.5 ohm, idle-voltage: 0.26 V}]}
                  outdoor-readings-seen: [Bay 2]
                """),
        Arguments.of(
            "commissioned, with vents, a repeater, and a unit exchanged since",
            site(
                        cable("24 AWG") + bias("Head House", "Road"),
                        unit(1, "old", "A, B, G", VENTS + between("120 ohm", "70 m"))
                            + "- repeater: Road\n"
                            + ("isolated: true\ntermination: {in: 120 ohm, out: 120 ohm}\n"
                                    + "cable-to-next: 30 m")
                                .indent(2)
                            + unit(2, "old", "A, B, G", VENTS + to("none", "30 m"))
                            + unit(3, "old", "A, B", "vents: none\n" + end("120 ohm")))
                    .replace("planned", "commissioned")
                + """
                commissioning:
                  date: 2026-03-14
                  by: R.O.
                  measured:
                    pair-resistance: 62 ohm
                    idle-voltage: 0.27 V
                    elsewhere:
                      - {at: Road, side: in, pair-resistance: 62 ohm, idle-voltage: 0.26 V}
                      - {at: Road, side: out, pair-resistance: 62 ohm, idle-voltage: 0.26 V}
                      - {at: Bay 3, pair-resistance: 62 ohm, idle-voltage: 0.25 V}
                  outdoor-readings-seen: [Bay 2, Bay 3]
                  storm-response-seen: [Head House, Bay 2]
                  stale-response-seen: [Head House, Bay 2]
                  renewed:
                    - date: 2026-06-20
                      by: R.O.
                      reason: Bay 2 exchanged
                      measured: {elsewhere: [{at: Road, side: out, pair-resistance: 61.5 ohm, idle-voltage: 0.26 V}]}
                      outdoor-readings-seen: [Bay 2]
                      storm-response-seen: [{unit: Bay 2, limit: 12 m/s, closed-in: 85 s}]
                      stale-response-seen: [Bay 2]
                """));
  }

  private static String repeater(String name, String cable) {
    return "- repeater: "
        + name
        + "\n"
        + ("termination: {in: 120 ohm, out: 120 ohm}\ncable-to-next: " + cable).indent(2);
  }

  private static String meter(String name, int address, String by) {
    return "- equipment: "
        + name
        + "\n"
        + ("address: "
                + address
                + "\nbroadcasts: ignored\npolled: {by: "
                + by
                + ", registers: 4, every: 1 min}\n"
                + to("none", "20 m"))
            .indent(2);
  }

  private static String vents(String more) {
    return "vents: roof\non-stale-readings: close-and-alarm\nclose-time: 90 s\n" + more;
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("sites")
  void anOrdinarySiteHasNoResult(String kind, String text) throws IOException {
    CheckReport report =
        SiteLinter.builder()
            .deviceTypes(SiteInput.text("device-types.yaml", TYPES))
            .build()
            .checkText("example.yaml", text);
    assertThat(report.notifications()).isEmpty();
    assertThat(List.copyOf(report.results())).as("%s:%n%s", kind, text).isEmpty();
  }
}
