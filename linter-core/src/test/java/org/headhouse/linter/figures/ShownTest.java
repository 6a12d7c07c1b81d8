package org.headhouse.linter.figures;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Quantities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How figures are written; what is offered to be written is a quantity of a site's file. */
class ShownTest {
  @ParameterizedTest
  @CsvSource({
    "0.2367, 237 mV",
    "-0.05, -50 mV",
    "9.9994, 9999 mV",
    "12, 12.0 V",
  })
  void volts(double volts, String shown) {
    assertThat(Shown.volts(volts)).isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource({"58.44, 58.4 ohm", "1250, 1.25 kohm", "Infinity, an open pair"})
  void ohms(double ohms, String shown) {
    assertThat(Shown.ohms(ohms)).isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource({"470, 470 ohm", "1200, 1.2 kohm", "620, 620 ohm"})
  void resistors(double ohms, String shown) {
    assertThat(Shown.resistor(ohms)).isEqualTo(shown);
    assertThat(Quantities.resistance(shown)).isNotNull();
  }

  @ParameterizedTest
  @CsvSource({
    "1042, 1042 m",
    "1000.4, 1000.4 m",
    "1219.2, 1219.2 m",
    "20, 20 m",
    "2.338, 2.3 m",
    "0.0701, 0.07 m",
    "0, 0.00 m"
  })
  void metres(double metres, String shown) {
    assertThat(Shown.metres(metres)).isEqualTo(shown);
  }

  /** The international foot of 0.3048 m. */
  @ParameterizedTest
  @CsvSource({
    "0.3048, 0.30 m, 1 ft",
    "36.576, 36.6 m, 120 ft",
    "42, 42 m, 137.8 ft",
    "1200, 1200 m, 3937 ft",
    "0.01, 0.01 m, 0.03 ft",
    "0, 0.00 m, 0.00 ft"
  })
  void lengthsInEitherMeasure(double metres, String metric, String us) {
    assertThat(Measure.METRIC.length(metres)).isEqualTo(metric);
    assertThat(Measure.US.length(metres)).isEqualTo(us);
    assertThat(Measure.METRIC.lengthOf(metres) + " " + Measure.METRIC.unit()).endsWith(" m");
    assertThat(Measure.US.lengthOf(metres) * 0.3048).isCloseTo(metres, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"1e-9, 1 nF", "2.2e-9, 2.2 nF", "4.7e-10, 470 pF"})
  void capacitors(double farads, String shown) {
    assertThat(Shown.capacitor(farads)).isEqualTo(shown);
    assertThat(Quantities.capacitance(shown)).isNotNull();
  }

  @ParameterizedTest
  @CsvSource({
    "1041.67, 1041 m",
    "868.06, 868 m",
    "20, 20 m",
    "2.338, 2.3 m",
    "0.2338, 0.23 m",
    "0.0701, 0.07 m"
  })
  void aLimitOfLengthIsRoundedDown(double metres, String shown) {
    assertThat(Shown.atMostMetres(metres)).isEqualTo(shown);
    Length read = requireNonNull(Quantities.length(shown));
    assertThat(read.metres()).isLessThanOrEqualTo(metres).isGreaterThan(metres * 0.9);
  }

  @ParameterizedTest
  @CsvSource({
    "0.1824, 180 ms, 190 ms",
    "0.18, 180 ms, 180 ms",
    "0.995, 990 ms, 1000 ms",
    "1, 1 s, 1000 ms",
    "3.79, 3.7 s, 4 s",
    "12.2, 12 s, 12.5 s",
    "100, 100 s, 100 s"
  })
  void timesAreRoundedToTheSafeSide(double seconds, String atMost, String atLeast) {
    assertThat(Shown.atMostSeconds(seconds)).isEqualTo(atMost);
    assertThat(Shown.atLeastSeconds(seconds)).isEqualTo(atLeast);
    Interval below = requireNonNull(Quantities.interval(atMost));
    Interval above = requireNonNull(Quantities.interval(atLeast));
    assertThat(below.seconds()).isEqualTo(Shown.atMost(seconds)).isLessThanOrEqualTo(seconds);
    assertThat(above.seconds()).isGreaterThanOrEqualTo(seconds);
  }

  @Test
  void othersAndAnotherLocale() {
    Locale usual = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertThat(Shown.unitLoads(32.125)).isEqualTo("32.125");
      assertThat(Shown.unitLoads(33)).isEqualTo("33");
      assertThat(Shown.supply(4.75)).isEqualTo("4.75 V");
      assertThat(Shown.plain(0.25)).isEqualTo("0.25");
      assertThat(Shown.share(0.0142)).isEqualTo("1.4 %");
      assertThat(Shown.percent(0.7051)).isEqualTo("71 %");
      assertThat(Shown.decibels(-0.158)).isEqualTo("-0.2 dB");
      assertThat(Shown.seconds(0.1424)).isEqualTo("142 ms");
      assertThat(Shown.seconds(5.218)).isEqualTo("5.2 s");
    } finally {
      Locale.setDefault(usual);
    }
  }

  /** What is shown is on the side of the limit on which the value is. */
  @ParameterizedTest
  @CsvSource({
    "0.2, 0.193, 193 mV, -0.3 dB",
    "0.2, 0.1996, 199.6 mV, -0.02 dB",
    "0.2, 0.1999996, 199.9996 mV, -0.00002 dB",
    "0.2, 0.2, 200 mV, 0.0 dB",
    "0.2, 0.2003, 200.3 mV, 0.01 dB",
    "0.2, 0.21, 210 mV, 0.4 dB",
    "12, 12.04, 12.04 V, 35.6 dB",
  })
  void voltagesBesideALimit(double limit, double volts, String shown, String decibels) {
    assertThat(Shown.voltsBeside(limit, volts)).isEqualTo(shown);
    assertThat(Shown.marginDecibels(20 * Math.log10(volts / 0.2))).isEqualTo(decibels);
  }

  @Test
  void otherValuesBesideALimit() {
    assertThat(Shown.ohmsBeside(54, 53.98)).isEqualTo("53.98 ohm");
    assertThat(Shown.ohmsBeside(54, 41)).isEqualTo("41.0 ohm");
    assertThat(Shown.ohmsBeside(54, 1250)).isEqualTo("1.25 kohm");
    assertThat(Shown.percentBeside(0.7, 0.7002)).isEqualTo("70.02 %");
    assertThat(Shown.percentBeside(1, 1.28)).isEqualTo("128 %");
    assertThat(Shown.secondsBeside(0.1793, 0.1794)).isEqualTo("179.4 ms");
    assertThat(Shown.secondsBeside(0.1, 0.1804)).isEqualTo("180 ms");
    assertThat(Shown.secondsBeside(2.5, 2.504)).isEqualTo("2.504 s");
  }
}
