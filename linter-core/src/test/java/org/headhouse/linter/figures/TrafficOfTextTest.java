package org.headhouse.linter.figures;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.line.TrafficFigures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Times in the words of a site's file. Sizes of frames: MODBUS Application Protocol V1.1b3;
 * characters and silences: MODBUS over Serial Line V1.02 §2.5.1; the sums are computed by hand.
 */
class TrafficOfTextTest {
  private static final double MICRO = 1e-6;

  private static SiteText line(String baud) {
    return new SiteText().line("baud", baud);
  }

  private static SiteText threeUnits(SiteText line) {
    return line.unit("120 ohm", "10 m").unit("none", "10 m").unit("120 ohm", "");
  }

  private static TrafficFigures traffic(Object site) {
    return traffic(LineCheck.of(site));
  }

  private static TrafficFigures traffic(LineCheck check) {
    return requireNonNull(check.figures().traffic());
  }

  /** 1.146 ms at 9600: quoted from the interface manual of an instrument maker. */
  @ParameterizedTest
  @CsvSource({
    "9600, even, 1, 1.146",
    "9600, none, 2, 1.146",
    "9600, none, 1, 1.042",
    "9600, odd, 2, 1.250",
    "19200, even, 1, 0.573",
    "1200, even, 1, 9.167",
    "115200, even, 1, 0.0955"
  })
  void character(String baud, String parity, String stopBits, double millis) {
    SiteText line = line(baud).line("parity", parity).line("stop-bits", stopBits);
    assertThat(traffic(threeUnits(line.broadcast(6, "5 s"))).characterSeconds() * 1e3)
        .isCloseTo(millis, within(5e-4));
  }

  /** 9 + 2 · 6 characters, t3.5 and a turnaround of 100 ms; t3.5 is 1.750 ms above 19 200 bit/s. */
  @ParameterizedTest
  @CsvSource({
    "9600, 6, 24.063 + 4.010 + 100, 128.073",
    "19200, 6, 12.031 + 2.005 + 100, 114.036",
    "38400, 6, 6.016 + 1.750 + 100, 107.766",
    "115200, 6, 2.005 + 1.750 + 100, 103.755",
    "9600, 123, 292.188 + 4.010 + 100, 396.198",
    "9600, 124, 396.198 and 12.604 + 4.010 + 100, 512.812"
  })
  void broadcast(String baud, int registers, String sum, double millis) {
    Double seconds = traffic(threeUnits(line(baud).broadcast(registers, "5 s"))).broadcastSeconds();
    assertThat(requireNonNull(seconds) * 1e3).as(sum).isCloseTo(millis, within(1.1e-3));
  }

  /** The times of the handbooks' sums, and 20 ms that a unit thinks about each request. */
  @ParameterizedTest
  @CsvSource({
    "9600, 10, 45.833 + 20, 65.833",
    "19200, 10, 22.917 + 20, 42.917",
    "9600, 125, 309.375 + 20, 329.375",
    "9600, 3, 29.792 + 20, 49.792",
    "9600, 126, 329.375 and 25.208 + 20, 374.583"
  })
  void poll(String baud, int registers, String sum, double millis) {
    TrafficFigures traffic =
        traffic(threeUnits(line(baud)).polls("serial", "every: 1 min, registers: " + registers));
    assertThat(requireNonNull(traffic.pollSeconds()) * 1e3)
        .as(sum)
        .isCloseTo(millis, within(1.1e-3));
    assertThat(traffic.broadcastSeconds()).isNull();
    assertThat(traffic.worstAgeSeconds()).isNull();
    assertThat(traffic.worstAgeOneSilentSeconds()).isNull();
  }

  private static final String POLLS = "every: 20 s, registers: 60, timeout: 1 s, retries: 1";

  private static SiteText busy(String polls) {
    return threeUnits(new SiteText().broadcast(12, "5 s")).polls("serial", polls);
  }

  /** Broadcast 36.5 characters and 100 ms in 5 s; three polls of 140 characters, 20 ms in 20 s. */
  @Test
  void utilisation() {
    assertThat(traffic(busy(POLLS)).utilisation())
        .isCloseTo(0.14182292 / 5 + 3 * 0.18041667 / 20, within(MICRO));
  }

  /**
   * Period, the longest other transaction, and 33 characters; a silent unit is waited for {@code
   * timeout · (1 + retries)} and 8 characters.
   */
  @ParameterizedTest
  @CsvSource({
    "'every: 20 s, registers: 60, timeout: 1 s, retries: 1', 5.21822917, 7.04697917",
    "'every: 20 s, registers: 60', 5.21822917, 7.04697917",
    "'every: 20 s, registers: 60, timeout: 500 ms, retries: 2', 5.21822917, 6.54697917",
    "'every: 20 s, registers: 60, timeout: 1 s, retries: 0', 5.21822917, 6.04697917",
    "'every: 20 s, registers: 60, timeout: 50 ms, retries: 0', 5.21822917, 5.21822917"
  })
  void worstAge(String polls, double seconds, double oneSilent) {
    TrafficFigures traffic = traffic(busy(polls));
    assertThat(requireNonNull(traffic.worstAgeSeconds())).isCloseTo(seconds, within(MICRO));
    assertThat(requireNonNull(traffic.worstAgeOneSilentSeconds()))
        .isCloseTo(oneSilent, within(MICRO));
  }

  /** Over Ethernet neither the share of the line nor the age knows of the polls. */
  @Test
  void pollsOverEthernetDoNotLoadTheLine() {
    TrafficFigures traffic =
        traffic(threeUnits(new SiteText().broadcast(12, "5 s")).polls("ethernet", POLLS));
    assertThat(traffic.pollSeconds()).isNull();
    assertThat(traffic.utilisation()).isCloseTo(0.14182292 / 5, within(MICRO));
    assertThat(traffic.worstAgeOneSilentSeconds()).isCloseTo(5.0378125, within(MICRO));
  }

  @ParameterizedTest
  @CsvSource({"turnaround, 200 ms, 0.1, 0", "processing, 50 ms, 0, 0.03"})
  void timesOfThePolicy(String name, String value, double broadcastMore, double pollMore) {
    TrafficFigures usual = traffic(busy(POLLS));
    TrafficFigures other =
        traffic(LineCheck.of(busy(POLLS)).parameter("traffic.busy", name, value));
    assertThat(requireNonNull(other.broadcastSeconds()))
        .isCloseTo(requireNonNull(usual.broadcastSeconds()) + broadcastMore, within(1e-12));
    assertThat(requireNonNull(other.pollSeconds()))
        .isCloseTo(requireNonNull(usual.pollSeconds()) + pollMore, within(1e-12));
  }

  private static SiteText withRig(String polled, String... more) {
    return new SiteText()
        .broadcast(12, "5 s")
        .unit("120 ohm", "10 m")
        .equipment("Dosing Rig", polled, "10 m", more)
        .unit("none", "10 m")
        .unit("120 ohm", "");
  }

  /** 8 + 5 + 2 · 125 characters, two silences and 20 ms are 329.375 ms. */
  @ParameterizedTest
  @CsvSource({"head, ethernet", "supervision, ethernet", "head, serial", "supervision, serial"})
  void equipmentThatIsAskedLoadsTheLine(String by, String link) {
    String polled = "by: " + by + ", registers: 125, every: 10 s";
    TrafficFigures traffic = traffic(withRig(polled).polls(link, POLLS));
    double zones = link.equals("serial") ? 3 * 0.18041667 / 20 : 0;
    assertThat(traffic.utilisation())
        .isCloseTo(0.14182292 / 5 + zones + 0.329375 / 10, within(MICRO));
    assertThat(requireNonNull(traffic.worstAgeSeconds()))
        .isCloseTo(5 + 0.329375 + 0.0378125, within(MICRO));
    assertThat(requireNonNull(traffic.worstAgeOneSilentSeconds()))
        .isCloseTo(5 + 2 + 0.00916667 + 0.0378125, within(MICRO));
    assertThat(traffic.pollSeconds() == null).isEqualTo(link.equals("ethernet"));
  }

  @Test
  void equipmentThatNobodyAsksTakesNoTime() {
    assertThat(traffic(withRig("")).utilisation()).isCloseTo(0.14182292 / 5, within(MICRO));
  }

  /** Without a broadcast the polls of equipment are all there is. */
  @Test
  void equipmentAloneIsTraffic() {
    String quiet =
        withRig("by: head, registers: 125, every: 10 s")
            .toString()
            .replaceAll("  traffic: .*\n", "");
    TrafficFigures traffic = traffic(quiet);
    assertThat(traffic.utilisation()).isCloseTo(0.0329375, within(MICRO));
    assertThat(traffic.broadcastSeconds()).isNull();
    assertThat(traffic.pollSeconds()).isNull();
  }

  /** Of three zones one takes 200 ms to answer, and two the 20 ms of every unit. */
  @Test
  void eachTypeTakesItsOwnTimeToAnswer() {
    SiteText site =
        new SiteText()
            .broadcast(12, "5 s")
            .unit("120 ohm", "10 m")
            .unit("none", "10 m", "device-type: slow")
            .equipment(
                "Dosing Rig", "by: head, registers: 125, every: 10 s", "10 m", "device-type: slow")
            .unit("120 ohm", "")
            .polls("serial", POLLS);
    TrafficFigures traffic = traffic(LineCheck.of(site).types("id: slow, processing: 200 ms"));
    assertThat(traffic.utilisation())
        .isCloseTo(
            0.14182292 / 5 + (2 * 0.18041667 + 0.36041667) / 20 + 0.509375 / 10, within(MICRO));
    assertThat(requireNonNull(traffic.pollSeconds())).isCloseTo(0.36041667, within(MICRO));
    assertThat(requireNonNull(traffic.worstAgeSeconds()))
        .isCloseTo(5 + 0.509375 + 0.0378125, within(MICRO));
  }

  /**
   * The converter adds 16 ms to each answer that the software gets, and none to the head unit's.
   */
  @ParameterizedTest
  @CsvSource({
    "'link: serial, at: Office', 0.016",
    "'link: serial, at: Attic', 0.004",
    "link: serial, 0.016",
    "link: through-head, 0"
  })
  void theConverterAddsItsLatency(String link, double latency) {
    SiteText site =
        new SiteText()
            .broadcast(12, "5 s")
            .unit("120 ohm", "10 m")
            .converter("Office", "16 ms", "10 m")
            .converter("Attic", "4 ms", "10 m")
            .equipment("Dosing Rig", "by: head, registers: 125, every: 10 s", "10 m")
            .unit("120 ohm", "")
            .polls("serial", POLLS);
    TrafficFigures traffic = traffic(site.toString().replace("link: serial", link));
    assertThat(requireNonNull(traffic.pollSeconds()))
        .isCloseTo(0.18041667 + latency, within(MICRO));
    assertThat(traffic.utilisation())
        .isCloseTo(0.14182292 / 5 + 2 * (0.18041667 + latency) / 20 + 0.329375 / 10, within(MICRO));
  }

  /** What is not understood is not taken for nothing. */
  @ParameterizedTest
  @CsvSource({
    "registers: 125, registers: many",
    "by: head, by: nobody",
    "every: 10 s, every: 0 s",
    "link: serial, link: radio",
    "registers: 60, registers: 0",
    "latency: 16 ms, latency: 16"
  })
  void whatIsNotUnderstoodLeavesNoFigures(String text, String other) {
    LineCheck check =
        LineCheck.of(
            new SiteText()
                .broadcast(12, "5 s")
                .unit("120 ohm", "10 m")
                .converter("Office", "16 ms", "10 m")
                .equipment("Dosing Rig", "by: head, registers: 125, every: 10 s", "10 m")
                .unit("120 ohm", "")
                .polls("serial", POLLS));
    assertThat(check.figures().traffic()).isNotNull();
    assertThat(check.with(text, other).figures().traffic()).isNull();
  }

  @Test
  void aLineWithoutTrafficHasNoTimes() {
    assertThat(LineCheck.of(threeUnits(new SiteText())).figures().traffic()).isNull();
  }
}
