package org.headhouse.linter.diagram;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.line.ReceivedVoltage;
import org.headhouse.linter.line.SegmentCircuit;
import org.headhouse.linter.line.SegmentFigures;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Repeater;

/**
 * The voltages of a line over the distance from its start, as far as they can be computed.
 *
 * @param idle for each segment with bias, its items in the order of the chain
 * @param received for each segment with two items or more, what each receives from its weakest
 *     sender
 * @param repeaters where the segments meet; their volts have no meaning
 * @param lengthMetres as far as the lengths of cable are known
 * @param complete whether every segment could be computed
 */
record LineProfile(
    List<List<Value>> idle,
    List<List<Value>> received,
    List<Value> repeaters,
    double lengthMetres,
    boolean complete) {

  /** A voltage at an item. */
  record Value(String name, double metres, double volts) {}

  /** How many values the longer of the curves has. */
  int items() {
    return Math.max(
        idle.stream().mapToInt(List::size).sum(), received.stream().mapToInt(List::size).sum());
  }

  static LineProfile of(LineFigures figures) {
    List<List<Value>> idle = new ArrayList<>();
    List<List<Value>> received = new ArrayList<>();
    List<Value> repeaters = new ArrayList<>();
    boolean complete = true;
    double start = 0;
    for (SegmentLine line : figures.segments()) {
      List<Double> hops = line.hopMetres();
      if (hops == null) {
        complete = false;
        break;
      }
      List<Double> metres = places(start, hops);
      List<ChainItem> items = line.segment().items();
      SegmentFigures known = line.figures();
      SegmentCircuit circuit = line.circuit();
      complete = complete && known != null;
      List<Double> idleVolts = known == null ? null : known.idleVolts();
      if (idleVolts != null) {
        List<Value> values = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
          values.add(new Value(Names.plain(items.get(i)), metres.get(i), idleVolts.get(i)));
        }
        add(values, idle);
      }
      if (circuit != null) {
        List<Value> values = new ArrayList<>();
        for (ReceivedVoltage one : ReceivedVoltage.weakestAtEachItem(circuit)) {
          String name = Names.plain(items.get(one.to()));
          values.add(new Value(name, metres.get(one.to()), one.volts()));
        }
        add(values, received);
      }
      if (line.segment().first() instanceof Repeater repeater) {
        repeaters.add(new Value(Names.plain(repeater), start, 0));
      }
      start = metres.get(metres.size() - 1);
    }
    return new LineProfile(idle, received, repeaters, start, complete);
  }

  private static void add(List<Value> values, List<List<Value>> stretches) {
    if (!values.isEmpty()) {
      stretches.add(values);
    }
  }

  private static List<Double> places(double start, List<Double> hops) {
    List<Double> places = new ArrayList<>(List.of(start));
    double reached = start;
    for (double hop : hops) {
      reached += hop;
      places.add(reached);
    }
    return places;
  }
}
