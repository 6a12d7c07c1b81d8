package org.headhouse.linter.fault;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.headhouse.linter.fault.Measurement.Quantity;
import org.headhouse.linter.line.SegmentSpread;

/**
 * The fault dictionary of one segment: every single fault, and what a meter shows with it. For one
 * thread.
 */
public final class SegmentFaults {
  private final int items;
  private final Hypothesis sound;
  private final List<Hypothesis> faulty = new ArrayList<>();
  private final List<Fault> faults = new ArrayList<>();

  /**
   * @param spread the segment as written, with all that its parts may have when they are measured
   * @param impedanceOhms of the cable
   */
  public SegmentFaults(SegmentSpread spread, double impedanceOhms, Meters meters) {
    FaultCatalogue catalogue = new FaultCatalogue(spread, impedanceOhms);
    this.items = spread.circuit().items().size();
    this.sound = new Hypothesis(null, catalogue.sound(), meters);
    for (FaultCatalogue.Entry entry : catalogue.all()) {
      faults.add(entry.fault());
      entry.looks().forEach(look -> faulty.add(new Hypothesis(entry.fault(), look, meters)));
    }
  }

  /** How many items the segment has. */
  public int items() {
    return items;
  }

  /** Every fault that is thought of, in the order of the chain. */
  public List<Fault> all() {
    return List.copyOf(faults);
  }

  /** Whether the segment as it is written can show all of some readings. */
  public boolean soundFits(Collection<MeterReading> readings) {
    return sound.fits(readings);
  }

  /**
   * The faults with which all of some readings can be had.
   *
   * @param otherwise which faults are left by what else is known
   * @param soundOtherwise whether a sound segment is left by that
   */
  public FaultsLeft left(
      Collection<MeterReading> readings, Predicate<Fault> otherwise, boolean soundOtherwise) {
    List<Hypothesis> states =
        hypotheses(readings).stream().filter(one -> otherwise.test(faultOf(one))).toList();
    return new FaultsLeft(this, states, soundOtherwise && soundFits(readings));
  }

  /** What a meter may show with a fault; a fault that can look in several ways has several. */
  public List<Span> shown(Fault fault, Measurement measurement) {
    return faulty.stream()
        .filter(one -> fault.equals(one.fault()))
        .map(one -> one.shown(measurement))
        .toList();
  }

  /** What a meter may show of the segment as it is written. */
  public Span shownSound(Measurement measurement) {
    return sound.shown(measurement);
  }

  /**
   * The faults that no measurement is sure to show: each can look like the segment as written,
   * whatever is measured.
   */
  public List<Fault> unseen() {
    Set<Fault> unseen = new LinkedHashSet<>();
    for (Hypothesis one : faulty) {
      if (!isSeen(one)) {
        unseen.add(faultOf(one));
      }
    }
    return List.copyOf(unseen);
  }

  private boolean isSeen(Hypothesis one) {
    for (int item = 0; item < items; item++) {
      for (Quantity quantity : Quantity.values()) {
        Measurement measurement = new Measurement(quantity, item);
        if (!one.shown(measurement).meets(sound.shown(measurement))) {
          return true;
        }
      }
    }
    return false;
  }

  Hypothesis sound() {
    return sound;
  }

  List<Hypothesis> hypotheses(Collection<MeterReading> readings) {
    return faulty.stream().filter(one -> one.fits(readings)).toList();
  }

  private static Fault faultOf(Hypothesis hypothesis) {
    Fault fault = hypothesis.fault();
    if (fault == null) {
      throw new IllegalStateException("a fault without a name");
    }
    return fault;
  }
}
