package org.headhouse.linter.line;

/**
 * What a meter between D1 and D0 may show with the power off.
 *
 * @param lowOhms with the loads, and the bias resistors returned through a shorted supply
 * @param highOhms terminators and cable only
 */
public record PairResistance(double lowOhms, double highOhms) {

  /**
   * The range at one item, from the nodal analysis of the whole segment, O(n): two over the
   * conductance of the differential ladder. On a short line {@code low = (Σ1/R_T + 1/(2·R_B) +
   * ΣUL/24 kΩ)^−1} and {@code high = (Σ1/R_T)^−1} (computed). A terminator with a capacitor is
   * open.
   *
   * @param item its index in the segment
   * @return {@link Double#POSITIVE_INFINITY} where nothing joins the conductors
   */
  public static PairResistance at(SegmentCircuit circuit, int item) {
    return new PairResistance(
        2 / DifferentialNetwork.steady(circuit).siemensAt(item),
        2 / DifferentialNetwork.terminatorsOnly(circuit).siemensAt(item));
  }
}
