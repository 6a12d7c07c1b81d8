package org.headhouse.linter.line;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The difference D1 − D0 at one item while no driver is on.
 *
 * @param item its index in the segment
 * @param volts positive, since the bias pulls D1 up
 */
public record IdleVoltage(int item, double volts) {

  /**
   * The difference at every item, from the nodal analysis of the whole segment, O(n). Without cable
   * resistance it is {@code Vs / (R_B · (g + 2·G))} with {@code g = 1/R_B + ΣUL/12 kΩ} and {@code G
   * = Σ1/R_T}, the formula behind the bias resistors of TI SLLA272. A terminator with a capacitor
   * is open.
   *
   * @return in the order of the chain; null without bias, where the state of an idle line is open
   */
  public static @Nullable List<Double> ofAllItems(SegmentCircuit circuit) {
    if (!circuit.isBiased()) {
      return null;
    }
    double[] volts = DifferentialNetwork.steady(circuit).volts();
    List<Double> all = new ArrayList<>(volts.length);
    for (double one : volts) {
      all.add(one);
    }
    return Collections.unmodifiableList(all);
  }

  /**
   * The lowest over all items, repeaters, equipment and converters included: they receive as well.
   * Of equal ones the first in the chain.
   *
   * @param idleVolts at every item of the segment
   */
  static IdleVoltage lowest(List<Double> idleVolts) {
    IdleVoltage lowest = new IdleVoltage(0, idleVolts.get(0));
    for (int item = 1; item < idleVolts.size(); item++) {
      double volts = idleVolts.get(item);
      lowest = volts < lowest.volts() ? new IdleVoltage(item, volts) : lowest;
    }
    return lowest;
  }
}
