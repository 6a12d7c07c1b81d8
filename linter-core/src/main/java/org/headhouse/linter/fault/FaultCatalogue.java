package org.headhouse.linter.fault;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.line.BiasResistors;
import org.headhouse.linter.line.SegmentCircuit;
import org.headhouse.linter.line.SegmentItem;
import org.headhouse.linter.line.SegmentSpread;
import org.headhouse.linter.line.Terminator;
import org.headhouse.linter.line.Tolerances;

/**
 * All single faults of a segment, and what each makes of it. A fault that can look in several ways
 * has several: it is excluded only where none of them fits.
 */
final class FaultCatalogue {
  /** A terminator that is left on or hidden in a device (common practice, no source). */
  private static final double LEAST_EXTRA_OHMS = 100;

  private static final double MOST_EXTRA_OHMS = 150;

  /** Resistors that are fitted by mistake (common practice, no source). */
  private static final double LEAST_WRONG_OHMS = 10;

  private static final double MOST_WRONG_OHMS = 2000;

  /** A value this near is none that is wrong (common practice, no source). */
  private static final double RIGHT_SHARE = 0.1;

  /** Bias that is left on or hidden in a device; over this it is a weak pull. */
  private static final double LEAST_EXTRA_BIAS_OHMS = 330;

  private static final double MOST_EXTRA_BIAS_OHMS = 2000;
  private static final Span EXTRA_SUPPLY_VOLTS = new Span(2.7, 5.5);

  private final SegmentCircuit circuit;
  private final Tolerances tolerances;
  private final double impedanceOhms;
  private final FaultyPair sound;
  private final boolean hasCapacitors;

  /**
   * @param impedanceOhms of the cable, which an extra terminator may have
   */
  FaultCatalogue(SegmentSpread spread, double impedanceOhms) {
    this.circuit = spread.circuit();
    this.tolerances = spread.tolerances();
    this.impedanceOhms = impedanceOhms;
    this.sound = sound(spread);
    this.hasCapacitors =
        circuit.items().stream()
            .anyMatch(item -> item.terminator() != null && item.terminator().capacitorInSeries());
  }

  /** A fault, and each way in which it can look. */
  record Entry(Fault fault, List<FaultyPair> looks) {}

  /** The segment as it is written. */
  FaultyPair sound() {
    return sound;
  }

  /** Every fault, those at items first, in the order of the chain. */
  List<Entry> all() {
    List<Entry> all = new ArrayList<>();
    int size = circuit.items().size();
    for (int item = 0; item < size; item++) {
      terminators(item, all);
      bias(item, all);
      add(all, FaultKind.PAIR_SHORTED, item, sound.shortedAt(item));
      swapped(item, all);
      unpowered(item, all);
      add(all, FaultKind.COMMON_OPEN, item, sound.withFloatingCommon());
      if (item < size - 1) {
        inHop(item, all);
      }
    }
    return all;
  }

  private static void add(List<Entry> all, FaultKind kind, int item, FaultyPair... looks) {
    all.add(new Entry(Fault.at(kind, item), List.of(looks)));
  }

  private void terminators(int item, List<Entry> all) {
    Terminator fitted = circuit.items().get(item).terminator();
    if (fitted != null) {
      add(all, FaultKind.TERMINATOR_MISSING, item, sound.withTerminator(item, Span.ZERO));
      add(all, FaultKind.TERMINATOR_VALUE, item, wrongValues(item, fitted));
    }
    FaultyPair extra = sound.withExtraTerminator(item, extraSiemens());
    if (hasCapacitors) {
      // One more of these passes no steady current, and shows nowhere.
      add(all, FaultKind.TERMINATOR_EXTRA, item, extra, sound);
    } else {
      add(all, FaultKind.TERMINATOR_EXTRA, item, extra);
    }
  }

  private FaultyPair[] wrongValues(int item, Terminator fitted) {
    double right = fitted.resistorOhms();
    double share = Math.max(RIGHT_SHARE, tolerances.terminators());
    if (fitted.capacitorInSeries()) {
      return new FaultyPair[] {
        sound, sound.withTerminator(item, ohms(LEAST_WRONG_OHMS, MOST_WRONG_OHMS))
      };
    }
    double under = right * (1 - share);
    double over = right * (1 + share);
    return new FaultyPair[] {
      sound.withTerminator(item, ohms(Math.min(LEAST_WRONG_OHMS, under / 2), under)),
      sound.withTerminator(item, ohms(over, Math.max(MOST_WRONG_OHMS, 2 * over)))
    };
  }

  private static Span ohms(double least, double most) {
    return Span.siemens(least, most, 0);
  }

  private Span extraSiemens() {
    double least = Math.min(LEAST_EXTRA_OHMS, impedanceOhms);
    double most = Math.max(MOST_EXTRA_OHMS, impedanceOhms);
    for (SegmentItem item : circuit.items()) {
      if (item.terminator() != null) {
        least = Math.min(least, item.terminator().resistorOhms());
        most = Math.max(most, item.terminator().resistorOhms());
      }
    }
    return Span.siemens(least, most, tolerances.terminators());
  }

  private void bias(int item, List<Entry> all) {
    List<BiasSource> here = sound.sources.stream().filter(it -> it.node() == item).toList();
    List<BiasSource> elsewhere = sound.sources.stream().filter(it -> it.node() != item).toList();
    for (BiasSource own : here) {
      add(all, FaultKind.BIAS_MISSING, item, sound.withSources(elsewhere));
      all.add(half(item, true, own, elsewhere));
      all.add(half(item, false, own, elsewhere));
      add(all, FaultKind.BIAS_REVERSED, item, sound.withSources(with(elsewhere, own.turned())));
    }
    add(all, FaultKind.BIAS_EXTRA, item, sound.withSources(with(sound.sources, extraBias(item))));
  }

  private Entry half(int item, boolean d1, BiasSource own, List<BiasSource> elsewhere) {
    return new Entry(
        new Fault(FaultKind.BIAS_HALF, item, item, d1, !d1),
        List.of(sound.withSources(with(elsewhere, own.half(d1)))));
  }

  private static List<BiasSource> with(List<BiasSource> some, BiasSource one) {
    List<BiasSource> all = new ArrayList<>(some);
    all.add(one);
    return all;
  }

  /** As any that is written, or as devices have it built in. */
  private BiasSource extraBias(int item) {
    double least = LEAST_EXTRA_BIAS_OHMS;
    double most = MOST_EXTRA_BIAS_OHMS;
    double leastVolts = EXTRA_SUPPLY_VOLTS.low();
    double mostVolts = EXTRA_SUPPLY_VOLTS.high();
    double share = tolerances.resistors();
    for (SegmentItem one : circuit.items()) {
      BiasResistors bias = one.bias();
      if (bias != null) {
        double own = share(bias);
        share = Math.max(share, own);
        least = Math.min(least, bias.eachOhms() * (1 - own));
        most = Math.max(most, bias.eachOhms() * (1 + own));
        leastVolts = Math.min(leastVolts, bias.supplyVolts() * (1 - tolerances.supply()));
        mostVolts = Math.max(mostVolts, bias.supplyVolts() * (1 + tolerances.supply()));
      }
    }
    Span siemens = ohms(least, most);
    return new BiasSource(
        item,
        siemens,
        siemens,
        new Span(leastVolts, mostVolts),
        siemens.high() * (1 - (1 - share) / (1 + share)),
        false);
  }

  private double share(BiasResistors bias) {
    Double own = bias.tolerance();
    return own == null ? tolerances.resistors() : own;
  }

  /** At one item, or from it on where only the cable that comes in is swapped. */
  private void swapped(int item, List<Entry> all) {
    int size = circuit.items().size();
    FaultyPair alone = sound.turned(item, item + 1);
    if (item == 0 || item == size - 1) {
      add(all, FaultKind.CONDUCTORS_SWAPPED, item, alone);
    } else {
      add(all, FaultKind.CONDUCTORS_SWAPPED, item, alone, sound.turned(item, size));
    }
  }

  private void unpowered(int item, List<Entry> all) {
    FaultyPair off = sound;
    List<BiasSource> others = new ArrayList<>();
    boolean hasBias = false;
    for (BiasSource source : sound.sources) {
      boolean own = source.node() == item;
      hasBias |= own;
      others.add(own ? source.unpowered() : source);
    }
    if (hasBias) {
      off = sound.withSources(others);
    }
    add(all, FaultKind.UNIT_UNPOWERED, item, off);
  }

  private void inHop(int hop, List<Entry> all) {
    all.add(open(hop, true, false));
    all.add(open(hop, false, true));
    all.add(open(hop, true, true));
    all.add(new Entry(Fault.inHop(FaultKind.PAIR_SHORTED, hop), List.of(sound.shortedIn(hop))));
  }

  private Entry open(int hop, boolean d1, boolean d0) {
    return new Entry(
        new Fault(FaultKind.CONDUCTOR_OPEN, hop, hop + 1, d1, d0),
        List.of(sound.open(hop, d1, d0)));
  }

  private static FaultyPair sound(SegmentSpread spread) {
    SegmentCircuit circuit = spread.circuit();
    Tolerances tolerances = spread.tolerances();
    int size = circuit.items().size();
    Span[] across = new Span[size];
    double[] load = new double[size];
    List<BiasSource> sources = new ArrayList<>();
    for (int item = 0; item < size; item++) {
      SegmentItem one = circuit.items().get(item);
      Terminator terminator = one.terminator();
      across[item] =
          terminator == null || terminator.capacitorInSeries()
              ? Span.ZERO
              : Span.siemens(
                  terminator.resistorOhms(), terminator.resistorOhms(), tolerances.terminators());
      load[item] = one.unitLoads() / org.headhouse.linter.line.Levels.UNIT_LOAD_OHMS;
      BiasResistors bias = one.bias();
      if (bias != null) {
        Double own = bias.tolerance();
        double share = own == null ? tolerances.resistors() : own;
        Span siemens = Span.siemens(bias.eachOhms(), bias.eachOhms(), share);
        sources.add(
            new BiasSource(
                item,
                siemens,
                siemens,
                Span.around(bias.supplyVolts(), tolerances.supply()),
                siemens.high() - siemens.low(),
                false));
      }
    }
    double[] least = new double[size - 1];
    double[] most = new double[size - 1];
    for (int hop = 0; hop < size - 1; hop++) {
      double metres = circuit.hopLengthsMetres().get(hop);
      least[hop] = metres * spread.cable().leastOhmsPerMetre();
      most[hop] = metres * spread.cable().greatestOhmsPerMetre();
    }
    return new FaultyPair(across, load, least, most, size).withSources(sources);
  }
}
