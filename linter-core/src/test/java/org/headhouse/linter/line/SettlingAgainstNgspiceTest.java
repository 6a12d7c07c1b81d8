package org.headhouse.linter.line;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The bounds against the waveforms of the circuit simulator ngspice, which is given every run of
 * cable, every stub and every part of random segments.
 */
class SettlingAgainstNgspiceTest {

  /** How many times too long the bounds of a segment are. */
  private record Tightness(double followed, double quick) {}

  @Test
  void noEdgeSettlesAfterTheBound(@TempDir Path folder) throws Exception {
    List<Tightness> found = compare(folder, 5, 20, 1);
    assertThat(median(found.stream().map(Tightness::followed).toList())).isLessThan(2);
  }

  @Test
  @Tag("long")
  void noEdgeOfManySegmentsDoes(@TempDir Path folder) throws Exception {
    List<Tightness> found = compare(folder, 91, 200, 3);
    List<Double> followed = found.stream().map(Tightness::followed).toList();
    List<Double> quick = found.stream().map(Tightness::quick).toList();
    System.out.printf(
        Locale.ROOT,
        "bound / waveform: median %.2f, of nine in ten under %.2f, most %.1f; quick bound: median %.0f%n",
        median(followed),
        quantile(followed, 0.9),
        Collections.max(followed),
        median(quick));
    assertThat(median(followed)).isLessThan(2);
  }

  private static List<Tightness> compare(Path folder, long seed, int segments, int senders)
      throws Exception {
    Ngspice ngspice = Ngspice.in(folder);
    RandomRingingLines lines = new RandomRingingLines(seed);
    List<Tightness> found = new ArrayList<>();
    for (int segment = 0; segment < segments; segment++) {
      RingingLine line = lines.next(2, 12);
      double quick = Settling.quickSeconds(line);
      Settling bound = Settling.of(line, 3e8);
      double settled = 0;
      for (int sender : senders(line, bound, segment, senders)) {
        settled = Math.max(settled, settledSeconds(ngspice, line, sender, bound.seconds(), quick));
      }
      if (settled > 0) {
        assertThat(settled)
            .as("segment %s: %s", segment, line)
            .isLessThanOrEqualTo(bound.seconds());
        found.add(new Tightness(bound.seconds() / settled, quick / settled));
      }
    }
    return found;
  }

  /** The worst, and others. */
  private static Set<Integer> senders(RingingLine line, Settling bound, int segment, int number) {
    Set<Integer> senders = new TreeSet<>();
    int size = line.branches().size();
    if (bound.worst() != null) {
      senders.add(bound.worst().sender());
    }
    for (int other = 0; other < number; other++) {
      senders.add((segment + other * 5) % size);
    }
    return senders;
  }

  private static double settledSeconds(
      Ngspice ngspice, RingingLine line, int sender, double bound, double quick) throws Exception {
    RingingNetlist netlist = new RingingNetlist(line, sender);
    List<Integer> receivers = new ArrayList<>();
    Set<String> nodes = new TreeSet<>();
    for (int item = 0; item < line.branches().size(); item++) {
      if (!netlist.node(item).equals(netlist.node(sender))) {
        receivers.add(item);
        nodes.add(netlist.node(item));
      }
    }
    if (receivers.isEmpty()) {
      return 0;
    }
    double end =
        Math.min(quick, Math.max(3 * bound, 5e-6))
            + 2 * netlist.delaySeconds(0, line.branches().size() - 1);
    Map<String, Double> crossings =
        ngspice.lastCrossings(
            netlist.elements(),
            List.copyOf(nodes),
            -line.wantedVolts(),
            Math.min(8e-9, line.edgeSeconds() / 10),
            end);
    double settled = 0;
    for (int receiver : receivers) {
      double at = requireNonNull(crossings.get(netlist.node(receiver)));
      settled = Math.max(settled, at - netlist.delaySeconds(sender, receiver));
    }
    return settled;
  }

  private static double median(List<Double> values) {
    return quantile(values, 0.5);
  }

  private static double quantile(List<Double> values, double share) {
    List<Double> sorted = new ArrayList<>(values);
    Collections.sort(sorted);
    return sorted.get((int) (share * sorted.size()));
  }
}
