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

  @Test
  void aLineWithoutTrafficHasNoTimes() {
    assertThat(LineCheck.of(threeUnits(new SiteText())).figures().traffic()).isNull();
  }
}
