package org.headhouse.linter.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantitiesTest {

  /**
   * The international foot is 0.3048 m exactly (agreement of 1959); 0 degF is 32 under the freezing
   * point in steps of 5/9 K, so 212 degF boils; prefixes are those of the SI.
   */
  @ParameterizedTest
  @CsvSource({
    "length, 42 m, 42",
    "length, 42m, 42",
    "length, 0.5 m, 0.5",
    "length, 007 m, 7",
    "length, 1 ft, 0.3048",
    "length, 120 ft, 36.576",
    "length, 4000 ft, 1219.2",
    "length, 999999999.999999999 m, 999999999.999999999",
    "resistance, 120 ohm, 120",
    "resistance, 4.7 kohm, 4700",
    "resistance, 0 ohm, 0",
    "voltage, 5 V, 5",
    "voltage, 240 mV, 0.24",
    "measured, -25 mV, -0.025",
    "measured, 0.24 V, 0.24",
    "windSpeed, 12 m/s, 12",
    "windSpeed, 36 km/h, 10",
    "windSpeed, 100 mph, 44.704",
    "percentage, 1 %, 0.01",
    "percentage, 2.5%, 0.025",
    "percentage, 099.9 %, 0.999",
    "interval, 500 ms, 0.5",
    "interval, 30 s, 30",
    "interval, 2 min, 120",
    "riseTime, 100 ns, 1e-7",
    "capacitance, 1 nF, 1e-9",
    "capacitance, 1000 pF, 1e-9",
    "temperature, 50 degC, 50",
    "temperature, -5 degC, -5",
    "temperature, 32 degF, 0",
    "temperature, 122 degF, 50",
    "temperature, 212 degF, 100",
    "temperature, -40 degF, -40",
    "area, 0.5 mm2, 0.5",
    "awg, 24 AWG, 24",
    "awg, 0 AWG, 0",
    "awg, 40 AWG, 40",
    "awg, 7AWG, 7",
    "unitLoad, 1, 1",
    "unitLoad, 1/8, 0.125",
    "unitLoad, 1/2, 0.5",
    "unitLoad, 0.25, 0.25"
  })
  void values(String kind, String written, double expected) {
    Double value = value(kind, written);
    assertThat(value).isNotNull();
    assertThat(value).isCloseTo(expected, within(Math.abs(expected) * 1e-12));
  }

  private static @Nullable Double value(String kind, String written) {
    return switch (kind) {
      case "length" -> of(Quantities.length(written), Length::metres);
      case "resistance" -> of(Quantities.resistance(written), Resistance::ohms);
      case "voltage" -> of(Quantities.voltage(written), Voltage::volts);
      case "measured" -> of(Quantities.measuredVoltage(written), Voltage::volts);
      case "windSpeed" -> of(Quantities.windSpeed(written), WindSpeed::metresPerSecond);
      case "percentage" -> of(Quantities.percentage(written), Percentage::share);
      case "interval" -> of(Quantities.interval(written), Interval::seconds);
      case "riseTime" -> of(Quantities.riseTime(written), Interval::seconds);
      case "capacitance" -> of(Quantities.capacitance(written), Capacitance::farads);
      case "temperature" -> of(Quantities.temperature(written), Temperature::celsius);
      case "area" -> of((Gauge.Area) Quantities.gauge(written), Gauge.Area::squareMillimetres);
      case "awg" ->
          of((Gauge.Awg) Quantities.gauge(written), gauge -> Double.valueOf(gauge.number()));
      case "unitLoad" -> Quantities.unitLoad(written);
      default -> throw new IllegalArgumentException(kind);
    };
  }

  private static <T> @Nullable Double of(@Nullable T quantity, Function<T, Double> value) {
    return quantity == null ? null : value.apply(quantity);
  }

  /** A resistor cannot be off by all of its value. */
  @ParameterizedTest
  @ValueSource(strings = {"100 %", "100.0 %", "999999999 %"})
  void aShareOfAllOrMoreIsNone(String written) {
    assertThat(Quantities.percentage(written)).isNull();
  }

  static Stream<Function<String, @Nullable Object>> parsers() {
    return Stream.of(
        Quantities::length,
        Quantities::resistance,
        Quantities::voltage,
        Quantities::interval,
        Quantities::riseTime,
        Quantities::capacitance,
        Quantities::temperature,
        Quantities::gauge,
        Quantities::termination);
  }

  /** Each with every unit there is, so that no parser takes any of them. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "40", // a bare number
        "",
        "%s",
        " 40 %s",
        "40 %s ",
        "40\t%s",
        "40\u00A0%s",
        "40 %s\n",
        "1,5 %s",
        "1'000 %s",
        "1 000 %s",
        "1_000 %s",
        "1e3 %s",
        "1E3 %s",
        "0x10 %s",
        "+40 %s",
        "--40 %s",
        ".5 %s",
        "5. %s",
        "1.2.3 %s",
        "NaN %s",
        "Infinity %s",
        "inf %s",
        "\u0664\u0660 %s", // Arabic-Indic digits
        "\uFF14\uFF10 %s", // full-width digits
        "1234567890 %s",
        "1.1234567890 %s",
        "40 %sx",
        "40 %s %s",
        "40 parsec",
        "1/2 %s"
      })
  void noQuantity(String form) {
    List<String> units =
        List.of("m", "ft", "ohm", "kohm", "V", "mV", "ms", "s", "min", "ns", "nF", "pF", "AWG");
    Stream.concat(units.stream(), Stream.of("mm2", "degC", "degF"))
        .map(unit -> form.replace("%s", unit))
        .forEach(
            written ->
                assertThat(parsers().map(parser -> parser.apply(written)))
                    .as("\"%s\"", written)
                    .containsOnlyNulls());
  }

  /** Units are written as the SI writes them: their case counts. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "40 M",
        "40 FT",
        "120 Ohm",
        "120 OHM",
        "120 \u03A9",
        "5 v",
        "5 MV",
        "5 S",
        "2 MIN",
        "1 NF",
        "24 awg",
        "0.5 MM2",
        "0.5 mm\u00B2",
        "20 \u00B0C",
        "20 C",
        "20 degc",
        "1 uF",
        "3 h",
        "3 km",
        "-5 m",
        "-5 ohm",
        "-1 V",
        "-1 s",
        "-1 nF",
        "-1 AWG",
        "-1 mm2",
        "41 AWG",
        "024 AWG",
        "24.0 AWG",
        "4/0 AWG",
        "- 5 degC"
      })
  void noSuchUnitOrRange(String written) {
    assertThat(parsers().map(parser -> parser.apply(written))).containsOnlyNulls();
  }

  @ParameterizedTest
  @CsvSource({
    "none, , ",
    "120 ohm, 120, ",
    "0.12 kohm, 120, ",
    "120 ohm + 1 nF, 120, 1e-9",
    "120ohm+1000pF, 120, 1e-9",
    "120 ohm  +  1 nF, 120, 1e-9"
  })
  void terminators(String written, @Nullable Double ohms, @Nullable Double farads) {
    Termination termination = Objects.requireNonNull(Quantities.termination(written));
    assertThat(of(termination.resistance(), Resistance::ohms)).isEqualTo(ohms);
    assertThat(of(termination.capacitance(), Capacitance::farads)).isEqualTo(farads);
    assertThat(termination.isFitted()).isEqualTo(ohms != null);
    assertThat(termination.written()).isEqualTo(written);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "None",
        "yes",
        "1 nF",
        "1 nF + 120 ohm",
        "120 ohm +",
        "+ 1 nF",
        "120 ohm + 120 ohm",
        "120 ohm + 1 nF + 1 nF",
        "120 ohm - 1 nF",
        "none + 1 nF",
        "120 + 1 nF"
      })
  void noTerminators(String written) {
    assertThat(Quantities.termination(written)).isNull();
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "1/0", "0/8", "-1", "1/", "/8", "1 / 8", "1/8 UL", "1.5", "01", ""})
  void noUnitLoad(String written) {
    assertThat(Quantities.unitLoad(written)).isNull();
  }
}
