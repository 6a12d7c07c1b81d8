package org.headhouse.linter.line;

/**
 * The sum D1 + D0 of an idle segment as one ladder, without approximation: the two equations of
 * {@link DifferentialNetwork} added, with {@code s = a + b}, read
 *
 * <pre>
 *   Σ (s − s')/R + (g + q)·s = q·Vs
 * </pre>
 *
 * where the terminators, which lie between the conductors, have dropped out.
 */
final class CommonModeNetwork {
  private CommonModeNetwork() {}

  /** For a steady voltage. A biased segment only: without bias nothing may join it to common. */
  static Ladder steady(SegmentCircuit circuit) {
    return DifferentialNetwork.ladder(
        circuit,
        item -> item.loadSiemens() + item.biasSiemens(),
        DifferentialNetwork.biasAmperes(circuit));
  }
}
