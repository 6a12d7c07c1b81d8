package org.headhouse.linter.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A segment with one sender as elements of a netlist, the pair as one line over its return: every
 * run and stub of lines (T) with resistors between, every load, receiver, terminator and bias. The
 * sender goes from +1.5 V to −1.5 V, against the bias.
 */
final class RingingNetlist {
  /** Of the impedance, the most that one section has of resistance. */
  private static final double MOST_RESISTANCE = 0.05;

  private final StringBuilder elements = new StringBuilder();
  private final RingingLine line;
  private final List<String> trunk = new ArrayList<>();
  private final List<String> terminals = new ArrayList<>();
  private int parts;

  RingingNetlist(RingingLine line, int sender) {
    this.line = line;
    SegmentCircuit circuit = line.circuit();
    for (int at = 0; at < circuit.items().size(); at++) {
      double hop = at == 0 ? 0 : circuit.hopLengthsMetres().get(at - 1);
      if (at > 0 && hop == 0) {
        trunk.add(trunk.get(at - 1));
      } else {
        trunk.add("t" + at);
      }
      if (hop > 0) {
        cable(trunk.get(at - 1), trunk.get(at), hop);
      }
      double stub = line.branches().get(at).stubMetres();
      terminals.add(stub > 0 ? "u" + at : trunk.get(at));
      if (stub > 0) {
        cable(trunk.get(at), terminals.get(at), stub);
      }
      item(circuit.items().get(at), line.branches().get(at), terminals.get(at));
    }
    elements.append(
        String.format(
            Locale.ROOT,
            "Vs %s 0 PWL(0 1.5 %.12g -1.5 1 -1.5)%n",
            terminals.get(sender),
            line.edgeSeconds()));
  }

  private void cable(String from, String to, double metres) {
    double ohms = 2 * line.circuit().ohmsPerMetre() * metres;
    int sections = (int) Math.ceil(ohms / (MOST_RESISTANCE * line.impedanceOhms()));
    String node = from;
    for (int section = 1; section <= sections; section++) {
      int number = parts++;
      String next = section == sections ? to : "s" + number;
      add("R", node, "a" + number, ohms / sections / 2);
      add("R", "b" + number, next, ohms / sections / 2);
      elements.append(
          String.format(
              Locale.ROOT,
              "T%d a%d 0 b%d 0 Z0=%.12g TD=%.12g rel=1e9 abs=1e9%n",
              number,
              number,
              number,
              line.impedanceOhms(),
              metres / sections / line.metresPerSecond()));
      node = next;
    }
  }

  private void item(SegmentItem item, RingingLine.Branch branch, String at) {
    if (item.unitLoads() > 0) {
      add("R", at, "0", 24_000 / item.unitLoads());
    }
    if (branch.receiverFarads() > 0) {
      add("C", at, "0", branch.receiverFarads());
    }
    Terminator terminator = item.terminator();
    if (terminator != null && terminator.capacitorInSeries()) {
      String middle = "c" + parts;
      add("R", at, middle, terminator.resistorOhms());
      add("C", middle, "0", branch.terminatorFarads());
    } else if (terminator != null) {
      add("R", at, "0", terminator.resistorOhms());
    }
    BiasResistors bias = item.bias();
    if (bias != null) {
      String supply = "b" + parts;
      add("V", supply, "0", bias.supplyVolts());
      add("R", supply, at, 2 * bias.eachOhms());
    }
  }

  private void add(String kind, String from, String to, double value) {
    elements.append(
        String.format(Locale.ROOT, "%s%d %s %s %.12g%n", kind, parts++, from, to, value));
  }

  String elements() {
    return elements.toString();
  }

  /** The node of an item's terminals. */
  String node(int item) {
    return terminals.get(item);
  }

  /** How long a front takes from one item to another. */
  double delaySeconds(int sender, int receiver) {
    double metres = 0;
    for (int hop = Math.min(sender, receiver); hop < Math.max(sender, receiver); hop++) {
      metres += line.circuit().hopLengthsMetres().get(hop);
    }
    double stubs =
        line.branches().get(sender).stubMetres() + line.branches().get(receiver).stubMetres();
    return (metres + stubs) / line.metresPerSecond();
  }
}
