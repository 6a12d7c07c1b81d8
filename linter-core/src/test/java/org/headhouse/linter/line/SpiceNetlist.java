package org.headhouse.linter.line;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;

/**
 * Segments as elements of a netlist, side by side: every conductor of every run, every load from
 * each conductor to common, every terminator, every bias with its supply. Items without cable
 * between them share their nodes.
 */
final class SpiceNetlist {
  private final StringBuilder elements = new StringBuilder();
  private int circuits;
  private int parts;

  /** One segment in the netlist, and where its items are. */
  final class Placed {
    private final String name = "c" + circuits++;
    private final int[] nodes;

    private Placed(SegmentCircuit circuit) {
      nodes = new int[circuit.items().size()];
      for (int item = 1; item < nodes.length; item++) {
        nodes[item] = nodes[item - 1] + (circuit.hopLengthsMetres().get(item - 1) > 0 ? 1 : 0);
      }
    }

    private String d1(int item) {
      return name + "p" + nodes[item];
    }

    private String d0(int item) {
      return name + "n" + nodes[item];
    }

    /** A driver that holds D1 − D0 at an item, floating. */
    Placed drivenAt(int item, double volts) {
      add("V", d1(item), d0(item), volts);
      return this;
    }

    /** A current through the pair at an item, as an ohmmeter drives it. */
    Placed measuredAt(int item, double amperes) {
      add("I", d0(item), d1(item), amperes);
      return this;
    }

    /** D1 against common. */
    double d1Volts(Map<String, Double> voltages, int item) {
      return requireNonNull(voltages.get(d1(item)));
    }

    /** D0 against common. */
    double d0Volts(Map<String, Double> voltages, int item) {
      return requireNonNull(voltages.get(d0(item)));
    }

    /** D1 − D0. */
    double volts(Map<String, Double> voltages, int item) {
      return d1Volts(voltages, item) - d0Volts(voltages, item);
    }
  }

  /** Which parts are there. */
  enum Parts {
    /** All of an idle line, capacitors open. */
    STEADY,
    /** The same with the supplies shorted. */
    STEADY_UNPOWERED,
    /** All while bits change, capacitors conducting. */
    SIGNAL,
    /** The same with the supplies shorted. */
    SIGNAL_UNPOWERED,
    /** Cable, and terminators that pass direct current; D0 of the first item is common. */
    TERMINATORS
  }

  Placed place(SegmentCircuit circuit, Parts kind) {
    Placed placed = new Placed(circuit);
    boolean signal = kind == Parts.SIGNAL || kind == Parts.SIGNAL_UNPOWERED;
    boolean powered = kind == Parts.STEADY || kind == Parts.SIGNAL;
    for (int hop = 0; hop < circuit.hopLengthsMetres().size(); hop++) {
      double ohms = circuit.hopLengthsMetres().get(hop) * circuit.ohmsPerMetre();
      if (ohms > 0) {
        add("R", placed.d1(hop), placed.d1(hop + 1), ohms);
        add("R", placed.d0(hop), placed.d0(hop + 1), ohms);
      }
    }
    for (int at = 0; at < circuit.items().size(); at++) {
      SegmentItem item = circuit.items().get(at);
      Terminator terminator = item.terminator();
      if (terminator != null && (signal || !terminator.capacitorInSeries())) {
        add("R", placed.d1(at), placed.d0(at), terminator.resistorOhms());
      }
      if (kind != Parts.TERMINATORS) {
        addLoadAndBias(item, at, placed, powered);
      }
    }
    if (kind == Parts.TERMINATORS) {
      add("R", placed.d0(0), "0", 1);
    }
    return placed;
  }

  private void addLoadAndBias(SegmentItem item, int at, Placed placed, boolean powered) {
    if (item.unitLoads() > 0) {
      add("R", placed.d1(at), "0", 12_000 / item.unitLoads());
      add("R", placed.d0(at), "0", 12_000 / item.unitLoads());
    }
    BiasResistors bias = item.bias();
    if (bias != null) {
      String supply = placed.name + "s" + at;
      add("V", supply, "0", powered ? bias.supplyVolts() : 0);
      add("R", supply, placed.d1(at), bias.eachOhms());
      add("R", placed.d0(at), "0", bias.eachOhms());
    }
  }

  private void add(String kind, String from, String to, double value) {
    elements.append(
        String.format(Locale.ROOT, "%s%d %s %s %.17g%n", kind, parts++, from, to, value));
  }

  String elements() {
    return elements.toString();
  }

  /**
   * The segment with its parts off their values.
   *
   * @param hopOhmsPerMetre of each run, by its index
   */
  static SegmentCircuit changed(
      SegmentCircuit circuit,
      ToDoubleFunction<Terminator> terminatorOhms,
      UnaryOperator<BiasResistors> bias,
      IntToDoubleFunction hopOhmsPerMetre) {
    List<Double> hopOhms = new ArrayList<>();
    for (int hop = 0; hop < circuit.hopLengthsMetres().size(); hop++) {
      hopOhms.add(circuit.hopLengthsMetres().get(hop) * hopOhmsPerMetre.applyAsDouble(hop));
    }
    return new SegmentCircuit(
        circuit.items().stream()
            .map(
                item -> {
                  Terminator terminator = item.terminator();
                  BiasResistors fitted = item.bias();
                  return item.with(
                      terminator == null
                          ? null
                          : new Terminator(
                              terminatorOhms.applyAsDouble(terminator),
                              terminator.capacitorInSeries()),
                      fitted == null ? null : bias.apply(fitted));
                })
            .toList(),
        hopOhms,
        1);
  }
}
