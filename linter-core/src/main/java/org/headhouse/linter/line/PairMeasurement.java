package org.headhouse.linter.line;

import org.headhouse.linter.stability.Internal;

/**
 * A measurement of the resistance between D1 and D0 at one item with all supplies off: what a sound
 * segment shows, and which faults of its terminators may hide within that.
 *
 * <p>A fault hides where a reading that it can give is one that a sound segment can give. Both lie
 * at an end of all tolerances: an extra terminator shows the most with the greatest resistors and
 * the warmest cable, a missing one the least with the least resistors, the coldest cable and full
 * loads (Rayleigh: no resistance falls when a resistor is raised).
 */
@Internal
public final class PairMeasurement {
  /** A short of a nanohm. */
  private static final double SHORT_SIEMENS = 1e9;

  private final SegmentSpread spread;
  private final MeterAccuracy meter;
  private final int at;
  private final double[] most;
  private final double[] least;
  private final PairResistance range;
  private final ReadingRange accepted;

  private PairMeasurement(
      SegmentSpread spread, MeterAccuracy meter, int at, double[] most, double[] least) {
    this.spread = spread;
    this.meter = meter;
    this.at = at;
    this.most = most;
    this.least = least;
    this.range = new PairResistance(lowOhms(most), highOhms(least));
    this.accepted = meter.readings(range.lowOhms(), range.highOhms());
  }

  /**
   * Of the line as it is written.
   *
   * @param at the index of the item in the segment
   */
  public static PairMeasurement asWritten(SegmentSpread spread, MeterAccuracy meter, int at) {
    return new PairMeasurement(
        spread, meter, at, PairSpread.most(spread), PairSpread.least(spread));
  }

  /** With all terminators taken off. */
  public static PairMeasurement open(SegmentSpread spread, MeterAccuracy meter, int at) {
    double[] most = PairSpread.loadsAndBias(spread);
    return new PairMeasurement(spread, meter, at, most, new double[most.length]);
  }

  /**
   * With all terminators taken off and the pair shorted at another item: the loop of the cable.
   *
   * @param shorted the index of that item
   */
  public static PairMeasurement shorted(
      SegmentSpread spread, MeterAccuracy meter, int at, int shorted) {
    double[] most = PairSpread.loadsAndBias(spread);
    double[] least = new double[most.length];
    most[shorted] += SHORT_SIEMENS;
    least[shorted] += SHORT_SIEMENS;
    return new PairMeasurement(spread, meter, at, most, least);
  }

  /** The index of the item that is measured at. */
  public int at() {
    return at;
  }

  /** What a sound segment has. */
  public PairResistance range() {
    return range;
  }

  /** What the meter may show of a sound segment. */
  public ReadingRange accepted() {
    return accepted;
  }

  /**
   * Whether one more terminator may go unseen, O(n).
   *
   * @param item the index of the item that has it
   * @param ohms its value; the tolerance of terminators comes on top
   */
  public boolean hidesExtra(int item, double ohms) {
    double[] changed = least.clone();
    changed[item] += 2 / (ohms * (1 + spread.tolerances().terminators()));
    double highest = highOhms(changed);
    return meter.readings(highest, highest).high() >= accepted.low();
  }

  /**
   * Whether it may go unseen that the terminator of an item is missing, O(n).
   *
   * @param item the index of the item
   */
  public boolean hidesMissing(int item) {
    double[] changed = most.clone();
    changed[item] -= PairSpread.terminators(spread).greatestSiemens()[item];
    double lowest = lowOhms(changed);
    return meter.readings(lowest, lowest).low() <= accepted.high();
  }

  private double lowOhms(double[] siemens) {
    return ohms(siemens, spread.leastHopOhms());
  }

  private double highOhms(double[] siemens) {
    return ohms(siemens, spread.greatestHopOhms());
  }

  private double ohms(double[] siemens, double[] hopOhms) {
    return 2 / new Ladder(siemens, new double[siemens.length], hopOhms).siemensAt(at);
  }
}
