package org.headhouse.linter.line;

import java.util.Arrays;
import java.util.List;

/**
 * The resistance that the driver of one item works into.
 *
 * @param item its index in the segment
 * @param ohms between D1 and D0 at its terminals; infinite where nothing joins them
 */
public record DriverLoad(int item, double ohms) {

  /**
   * What each item works into while it sends, exactly and in O(n): two over the conductance of the
   * differential ladder at the item, walked once from each end. Supplies count as shorts, so that a
   * bias is {@code 2·R_B} across the pair; a terminator with a capacitor counts as its resistor; an
   * item is {@code 24 kΩ / UL}, the sender's own receiver as well. Without cable resistance it is
   * {@code (Σ1/R_T + Σ1/(2·R_B) + ΣUL/24 kΩ)^−1} (computed).
   *
   * <p>TIA/EIA-485-A promises 1.5 V into 54 Ω and says nothing of less (TI SLLA272).
   *
   * @return ohms in the order of the chain
   */
  public static List<Double> ofAllItems(SegmentCircuit circuit) {
    return Arrays.stream(DifferentialNetwork.signal(circuit).siemens())
        .mapToObj(siemens -> 2 / siemens)
        .toList();
  }

  /**
   * What no driver can work into less than: everything at its terminals, as if there were no cable.
   */
  public static double leastPossibleOhms(SegmentCircuit circuit) {
    double siemens = 0;
    for (SegmentItem item : circuit.items()) {
      siemens += item.signalTerminatorSiemens() + (item.biasSiemens() + item.loadSiemens()) / 2;
    }
    return 1 / siemens;
  }

  /** The least of them; of equal ones the first in the chain. */
  public static DriverLoad heaviest(SegmentCircuit circuit) {
    List<Double> ohms = ofAllItems(circuit);
    int heaviest = 0;
    for (int item = 1; item < ohms.size(); item++) {
      heaviest = ohms.get(item) < ohms.get(heaviest) ? item : heaviest;
    }
    return new DriverLoad(heaviest, ohms.get(heaviest));
  }
}
