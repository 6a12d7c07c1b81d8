package org.headhouse.linter.line;

import org.headhouse.linter.stability.Internal;

/**
 * A copper conductor.
 *
 * <p>A stranded conductor may have up to about 7 % more resistance than its area says: IEC 60228
 * class 2 allows 36.0 ohms a kilometre for 0.5 mm2, where the area alone gives 34.5.
 *
 * @param areaSquareMetres the area of its cross-section
 * @param greatestShare the most that its resistance may be, of that of copper of this area
 */
@Internal
public record Wire(double areaSquareMetres, double greatestShare) {

  /** Resistivity of annealed copper at 20 °C (Copper Wire Tables, NBS Handbook 100, 1966). */
  public static final double RESISTIVITY_OHM_METRES = 0.017241e-6;

  /** Change of the resistance per kelvin, of that at 20 °C (NBS Handbook 100). */
  public static final double TEMPERATURE_COEFFICIENT_PER_KELVIN = 0.00393;

  private static final double REFERENCE_CELSIUS = 20;

  /** Where the linear formula reaches zero: {@code 20 °C − 1/α}, some −234 °C. */
  public static final double LEAST_CELSIUS =
      REFERENCE_CELSIUS - 1 / TEMPERATURE_COEFFICIENT_PER_KELVIN;

  private static final double AWG_36_DIAMETER_METRES = 0.127e-3;
  private static final int THINNEST_AWG = 40;

  public Wire {
    Require.positive(areaSquareMetres, "area");
    Require.positive(greatestShare, "greatest share of the resistance");
  }

  /**
   * A conductor of an American Wire Gauge.
   *
   * @param number 0 to 40
   */
  public static Wire awg(int number) {
    double diameterMetres = awgDiameterMetres(number);
    return new Wire(Math.PI / 4 * diameterMetres * diameterMetres, 1);
  }

  /**
   * A conductor sold by its area in mm2, which IEC 60228 lets have more resistance than copper of
   * just that area.
   */
  public static Wire squareMillimetres(double area) {
    return new Wire(area * 1e-6, ClassTwoCopper.greatestShare(area));
  }

  /**
   * The diameter of an American Wire Gauge: {@code d = 0.127 mm · 92^((36 − n)/39)}, so that 39
   * steps lead from 36 AWG, 0.127 mm, to 0000, 92 times as thick (NBS Handbook 100 after ASTM
   * B258).
   *
   * @param number 0 to 40
   */
  public static double awgDiameterMetres(int number) {
    if (number < 0 || number > THINNEST_AWG) {
      throw new IllegalArgumentException("AWG must be 0 to 40: " + number);
    }
    return AWG_36_DIAMETER_METRES * Math.pow(92, (36 - number) / 39.0);
  }

  /**
   * The resistance of one conductor: {@code r = ρ/A · (1 + α · (T − 20 °C))} (NBS Handbook 100).
   *
   * @param celsius the temperature of the conductor, above {@link #LEAST_CELSIUS}
   */
  public double resistanceOhmsPerMetre(double celsius) {
    double growth = 1 + TEMPERATURE_COEFFICIENT_PER_KELVIN * (celsius - REFERENCE_CELSIUS);
    Require.positive(growth, "the resistance in relation to that at 20 °C");
    return RESISTIVITY_OHM_METRES / areaSquareMetres * growth;
  }

  /**
   * The most that one conductor may have: for one sold by its area what IEC 60228 allows, at other
   * temperatures in proportion.
   *
   * @param celsius the temperature of the conductor, above {@link #LEAST_CELSIUS}
   */
  public double greatestOhmsPerMetre(double celsius) {
    return greatestShare * resistanceOhmsPerMetre(celsius);
  }
}
