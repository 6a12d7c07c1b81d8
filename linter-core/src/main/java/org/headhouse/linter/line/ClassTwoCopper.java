package org.headhouse.linter.line;

import java.util.Map;

/** Stranded conductors of plain copper, class 2 of IEC 60228. */
final class ClassTwoCopper {

  /**
   * The most ohms a kilometre at 20 °C, by nominal area in mm2: 0.5 to 1.5 as quoted from IEC
   * 60228, the others from memory.
   */
  private static final Map<Double, Double> MOST_OHMS_PER_KILOMETRE =
      Map.of(
          0.5, 36.0, 0.75, 24.5, 1.0, 18.1, 1.5, 12.1, 2.5, 7.41, 4.0, 4.61, 6.0, 3.08, 10.0, 1.83);

  private ClassTwoCopper() {}

  /**
   * The most resistance of a conductor, of that of copper of just its nominal area. An area that
   * the standard does not have is taken as the worst that it has, some 7 % more.
   */
  static double greatestShare(double squareMillimetres) {
    Double most = MOST_OHMS_PER_KILOMETRE.get(squareMillimetres);
    return most == null ? worstShare() : most / ofArea(squareMillimetres);
  }

  private static double worstShare() {
    return MOST_OHMS_PER_KILOMETRE.entrySet().stream()
        .mapToDouble(entry -> entry.getValue() / ofArea(entry.getKey()))
        .max()
        .orElseThrow();
  }

  private static double ofArea(double squareMillimetres) {
    return Wire.RESISTIVITY_OHM_METRES * 1e9 / squareMillimetres;
  }
}
