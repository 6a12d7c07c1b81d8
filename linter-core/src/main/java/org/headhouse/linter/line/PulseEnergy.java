package org.headhouse.linter.line;

import java.util.List;

/**
 * The most that a pulse of one volt brings into a segment while it lasts, for a pulse as long as
 * the edge that is followed; O(n) for all senders.
 *
 * <p>Within the time r a sender notices nothing that is further away than {@code u·r/2}: it gives
 * what it would give if the cable ended there. That piece has capacitances C, conductances G, and
 * after a step of one volt comes to rest with {@code F = ½·C + ½·L·G²} at most. Its difference from
 * that begins with F and never has more, so what is stored never exceeds 4·F. The charge on the
 * capacitances is {@code √(C · 8·F)} at most, and that through the conductances {@code √(r·G·E)} by
 * Schwarz's inequality, with E the energy that has come in, in joules the same as the whole charge:
 * {@code E ≤ a + √(b·E)} with {@code a = √(8·C·F)} and {@code b = r·G}, so {@code E ≤ a + b +
 * √(a·b)}. At the end of the pulse the sender is shorted and gives nothing more.
 */
final class PulseEnergy {
  private PulseEnergy() {}

  /** What an item conducts steadily between the conductors. */
  static double siemens(SegmentItem item) {
    return item.loadSiemens() / 2 + item.steadyTerminatorSiemens() + item.biasSiemens() / 2;
  }

  /**
   * The energy by sender.
   *
   * @param farads what hangs on each item, its stub with it
   * @return in joules, in the order of the chain
   */
  static double[] ofAllSenders(RingingLine line, double[] farads) {
    int items = farads.length;
    double[] metres = new double[items];
    double[] faradsBefore = new double[items + 1];
    double[] siemensBefore = new double[items + 1];
    double[] stubsBefore = new double[items + 1];
    List<Double> hops = line.circuit().hopLengthsMetres();
    for (int item = 0; item < items; item++) {
      SegmentItem one = line.circuit().items().get(item);
      metres[item] = item == 0 ? 0 : metres[item - 1] + hops.get(item - 1);
      faradsBefore[item + 1] = faradsBefore[item] + farads[item];
      siemensBefore[item + 1] = siemensBefore[item] + siemens(one);
      stubsBefore[item + 1] = stubsBefore[item] + line.branches().get(item).stubMetres();
    }
    double reach = line.metresPerSecond() * line.followedEdgeSeconds() / 2;
    double[] joules = new double[items];
    int from = 0;
    int to = 0;
    for (int sender = 0; sender < items; sender++) {
      while (metres[from] < metres[sender] - reach) {
        from++;
      }
      while (to < items && metres[to] <= metres[sender] + reach) {
        to++;
      }
      double trunk =
          Math.min(reach, metres[sender]) + Math.min(reach, metres[items - 1] - metres[sender]);
      double held = faradsBefore[to] - faradsBefore[from] + trunk * line.faradsPerMetre();
      double siemens = siemensBefore[to] - siemensBefore[from];
      double henries = (trunk + stubsBefore[to] - stubsBefore[from]) * line.henriesPerMetre();
      double rest = (held + henries * siemens * siemens) / 2;
      double charge = Math.sqrt(8 * held * rest);
      double taken = line.followedEdgeSeconds() * siemens;
      joules[sender] = charge + taken + Math.sqrt(charge * taken);
    }
    return joules;
  }
}
