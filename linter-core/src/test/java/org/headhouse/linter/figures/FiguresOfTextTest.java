package org.headhouse.linter.figures;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.line.SegmentFigures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values of the trade's handbooks, asked for in the words of a site's file. */
class FiguresOfTextTest {
  /** A load that cannot be told from none. */
  private static final String NO_LOAD = "0.000001";

  private static SegmentFigures first(LineCheck check) {
    return requireNonNull(check.figures().segments().get(0).figures());
  }

  private static LineCheck twoUnits(SiteText line, String termination, String cable, String load) {
    return LineCheck.of(
            line.unit(termination, cable, "device-type: box")
                .unit(termination, "", "device-type: box"))
        .types("id: box, unit-load: " + load);
  }

  /**
   * Computed from {@code V = Vs / (R_B · (1/R_B + ΣUL/12 kΩ + 2 · Σ 1/R_T))}, nodal analysis, to
   * which the formula of The RS-485 Design Guide, TI SLLA272, comes down. Each of the two units has
   * half the loads.
   */
  @ParameterizedTest
  @CsvSource({
    "450, 120, 5.00, 0.000001, 0.3125",
    "450, 120, 5.00, 14, 0.2933",
    "450, 120, 5.00, 16, 0.2907",
    "560, 120, 5.00, 0.000001, 0.2542",
    "560, 120, 5.00, 14, 0.2384",
    "560, 120, 5.00, 16, 0.2363",
    "650, 120, 5.00, 0.000001, 0.2206",
    "650, 120, 5.00, 14, 0.2068",
    "650, 120, 5.00, 16, 0.2049",
    "450, 150, 5.00, 0.000001, 0.3846",
    "450, 150, 5.00, 14, 0.3559",
    "450, 150, 5.00, 16, 0.3521",
    "650, 150, 5.00, 0.000001, 0.2727",
    "650, 150, 5.00, 14, 0.2519",
    "650, 150, 5.00, 16, 0.2492",
    "650, 120, 4.75, 14, 0.1964"
  })
  void idleVoltage(String resistors, String terminators, String supply, String load, double volts) {
    SiteText line = new SiteText().bias("Head House", resistors + " ohm", supply + " V");
    List<Double> idle =
        requireNonNull(first(twoUnits(line, terminators + " ohm", "0 m", load)).idleVolts());
    assertThat(idle).hasSize(2).allSatisfy(one -> assertThat(one).isCloseTo(volts, within(5e-5)));
  }

  /** 28 units of which nothing is known are 28 unit loads; 650 ohm is in the range and too weak. */
  @Test
  void aUnitOfUnknownTypeIsOneUnitLoad() {
    LineCheck check =
        LineCheck.of(
            new SiteText()
                .bias("Head House", "650 ohm", "4750 mV")
                .unit("120 ohm", "0 m")
                .units(26, "0 ft")
                .unit("120 ohm", ""));
    assertThat(first(check).unitLoads()).isEqualTo(28);
    assertThat(requireNonNull(first(check).lowestIdle()).volts()).isCloseTo(0.1964, within(5e-5));
  }

  /** Power off, short line, between A and B (computed): 60 ∥ 2 · 560 = 56.95. */
  @ParameterizedTest
  @CsvSource({
    "120 ohm, '', 60, 60",
    "150 ohm, '', 75, 75",
    "0.12 kohm, 560 ohm, 56.95, 60",
    "120 ohm, 0.56 kohm, 56.95, 60"
  })
  void pairResistance(String terminators, String bias, double low, double high) {
    SiteText line = new SiteText();
    if (!bias.isEmpty()) {
      line.bias("Bay 2", bias, "5 V");
    }
    var pair = first(twoUnits(line, terminators, "0 m", NO_LOAD)).pairResistance();
    assertThat(pair.lowOhms()).isCloseTo(low, within(5e-3));
    assertThat(pair.highOhms()).isCloseTo(high, within(5e-3));
  }

  /** At rest nothing joins the two conductors but capacitors and loads (computed). */
  @Test
  void terminatorsWithCapacitorsLeaveThePairOpen() {
    var pair = first(twoUnits(new SiteText(), "120 ohm + 1 nF", "40 m", "1/2")).pairResistance();
    assertThat(pair.highOhms()).isInfinite();
    // Two halves of a unit load, 24 kΩ from each conductor to common.
    assertThat(pair.lowOhms()).isCloseTo(24_000, within(10.0));
  }

  /**
   * Ohms per 1000 ft at 20 °C: wire table, HyperPhysics, after Floyd, 0.1 %. 24 AWG at 50 °C 94.142
   * ohm a kilometre, and the areas: computed from the resistivity and coefficient of NBS Handbook
   * 100.
   */
  @ParameterizedTest
  @CsvSource({
    "18 AWG, '', 1000 ft, 6.385",
    "20 AWG, '', 1000 ft, 10.15",
    "22 AWG, 20 degC, 1000 ft, 16.14",
    "24 AWG, 68 degF, 1000 ft, 25.67",
    "26AWG, '', 304.8 m, 40.81",
    "24 AWG, '', 1000 m, 84.213",
    "24 AWG, 50 degC, 1000 m, 94.142",
    "24 AWG, 122 degF, 1000 m, 94.142",
    "0.5 mm2, '', 1000 m, 34.482",
    "1.5 mm2, '', 1000 m, 11.494"
  })
  void loopResistance(String gauge, String temperature, String length, double eachOhms) {
    SiteText line = new SiteText().line("cable", SiteText.cable(gauge, "120 ohm"));
    if (!temperature.isEmpty()) {
      line.line("maximum-temperature", temperature);
    }
    assertThat(first(twoUnits(line, "120 ohm", length, "1")).loopResistanceOhms())
        .isCloseTo(2 * eachOhms, within(2 * eachOhms * 1e-3));
  }

  /** 120 / (120 + 168.43) = 0.416 of the driver's 1.5 V (computed). */
  @Test
  void aKilometreOf24AwgHalvesTheSignal() {
    var weakest =
        requireNonNull(
            first(twoUnits(new SiteText(), "120 ohm", "1000 m", NO_LOAD)).weakestReceived());
    assertThat(weakest.volts()).isCloseTo(1.5 * 0.416, within(1e-3));
  }

  /** Eighths add up; the side of a repeater is one. */
  @Test
  void loads() {
    LineCheck check =
        LineCheck.of(
                new SiteText()
                    .unit("120 ohm", "10 m", "device-type: eighth")
                    .unit("none", "10 m", "device-type: third")
                    .repeater("Boiler", "120 ohm", "10 m")
                    .unit("120 ohm", "", "device-type: eighth"))
            .types("id: eighth, unit-load: 1/8", "id: third, unit-load: 1/3");
    assertThat(check.figures().segments())
        .extracting(SegmentSummary::unitLoads)
        .containsExactly(1 / 8.0 + 1 / 3.0 + 1, 1 + 1 / 8.0);
  }

  /** A repeater stands in both segments; its bias is on its far side. */
  @Test
  void biasAtARepeaterIsOnItsFarSide() {
    SiteFigures figures =
        LineCheck.of(
                new SiteText()
                    .bias("Boiler", "560 ohm", "5 V")
                    .unit("120 ohm", "100 ft")
                    .repeater("Boiler", "120 ohm", "0 m")
                    .unit("120 ohm", ""))
            .figures();
    SegmentSummary near = figures.segments().get(0);
    SegmentSummary far = figures.segments().get(1);
    assertThat(near.items()).containsExactly("Head House", "Boiler");
    assertThat(far.items()).containsExactly("Boiler", "Bay 2");
    assertThat(near.lengthMetres()).isEqualTo(30.48);
    assertThat(requireNonNull(near.figures()).idleVolts()).isNull();
    assertThat(requireNonNull(near.figures()).weakestReceived())
        .as("a repeater sends and receives")
        .isNotNull();
    // 5 V / (560 ohm · (1/560 + 2/12000 + 2 · 2/120)), computed.
    assertThat(requireNonNull(requireNonNull(far.figures()).idleVolts()))
        .hasSize(2)
        .allSatisfy(volts -> assertThat(volts).isCloseTo(0.25301, within(5e-5)));
  }

  @Test
  void biasAtARepeaterBehindWhichNothingFollowsIsOnItsNearSide() {
    SegmentFigures figures =
        first(
            LineCheck.of(
                new SiteText()
                    .bias("Boiler", "560 ohm", "5 V")
                    .unit("120 ohm", "0 m")
                    .repeater("Boiler", "120 ohm", "")));
    assertThat(Collections.min(requireNonNull(figures.idleVolts()))).isCloseTo(0.253, within(5e-4));
  }

  /** The power-off resistance is told where the head unit is, else at the first item. */
  @Test
  void resistanceIsMeasuredAtTheHeadUnit() {
    String asWritten =
        new SiteText().unit("120 ohm", "1000 m").unit("none", "1000 m").unit("none", "").toString();
    LineCheck atStart = LineCheck.of(asWritten);
    LineCheck atEnd =
        atStart
            .with("role: head", "role: other")
            .with("unit: Bay 3\n    role: follower", "unit: Bay 3\n    role: head");
    assertThat(first(atStart).pairResistance().highOhms()).isCloseTo(120, within(1e-6));
    // 2 km of 24 AWG, out and back: 2 · 2 · 84.213 ohm more (computed).
    assertThat(first(atEnd).pairResistance().highOhms()).isCloseTo(456.85, within(0.05));
  }
}
