package org.headhouse.linter.figures;

import java.util.List;
import org.headhouse.linter.line.AcceptedReadings;
import org.headhouse.linter.line.AcceptedReadings.IdleRange;
import org.headhouse.linter.line.Levels;
import org.headhouse.linter.line.MeterAccuracy;
import org.headhouse.linter.line.ReadingRange;
import org.headhouse.linter.line.SegmentSpread;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * What a meter may show at the items of a segment, over the range of tolerances and temperatures
 * and with its own error. The rule judges by it; figures and sheets show it.
 */
@Internal
public final class SegmentReadings {
  /**
   * What an idle line without bias may show to either side; beyond it something holds the line
   * (common practice, no source).
   */
  public static final double UNHELD_VOLTS = 0.05;

  private final SegmentLine line;
  private final MeterAccuracy ohmmeter;
  private final MeterAccuracy voltmeter;
  private final @Nullable SegmentSpread spread;
  private @Nullable List<ReadingRange> pairOhms;

  SegmentReadings(SegmentLine line, SitePolicy policy) {
    this.line = line;
    this.ohmmeter = policy.ohmmeter();
    this.voltmeter = policy.voltmeter();
    SegmentNetwork network = line.network();
    this.spread = network == null ? null : network.spreadOfReadings();
  }

  /**
   * Of the pair resistance at an item.
   *
   * @param item its index in the segment
   * @return null where a part of what it needs is not known, and where no terminator conducts
   */
  public @Nullable ReadingRange pairOhms(int item) {
    List<ReadingRange> all = pairOhms();
    return all == null ? null : all.get(item);
  }

  /** The same for every item, in the order of the segment, O(n). */
  public @Nullable List<ReadingRange> pairOhms() {
    if (pairOhms == null && spread != null && line.conductsSteadily()) {
      pairOhms =
          AcceptedReadings.pairResistances(spread).stream()
              .map(range -> ohmmeter.readings(range.lowOhms(), range.highOhms()))
              .toList();
    }
    return pairOhms;
  }

  /** Whether the idle line is held, or has to be. */
  public boolean isHeld() {
    return !line.holdingBiases().isEmpty() || line.needsBias();
  }

  /**
   * Of the idle voltage at an item. A line that is held is never under what a receiver needs. One
   * that is not has no range; beyond these limits a bias holds it that is not written.
   *
   * @param item its index in the segment
   */
  public ReadingRange idleVolts(int item) {
    IdleRange computed = spread == null ? null : AcceptedReadings.idleVolts(spread, item);
    return computed == null ? notComputed() : accepted(computed);
  }

  /** The same for every item, in the order of the segment. */
  public List<ReadingRange> idleVolts() {
    List<IdleRange> computed = spread == null ? null : AcceptedReadings.idleVolts(spread);
    return computed == null
        ? line.segment().items().stream().map(item -> notComputed()).toList()
        : computed.stream().map(this::accepted).toList();
  }

  private ReadingRange notComputed() {
    return isHeld()
        ? new ReadingRange(leastHeldVolts(), Double.POSITIVE_INFINITY)
        : new ReadingRange(-UNHELD_VOLTS, UNHELD_VOLTS);
  }

  private ReadingRange accepted(IdleRange computed) {
    ReadingRange readings = voltmeter.readings(computed.lowVolts(), computed.highVolts());
    if (!isHeld()) {
      return new ReadingRange(-UNHELD_VOLTS, Math.max(UNHELD_VOLTS, readings.high()));
    }
    double least = Math.max(leastHeldVolts(), readings.low());
    return least > readings.high() ? notComputed() : new ReadingRange(least, readings.high());
  }

  /** The least that proves what a receiver needs. */
  public double leastHeldVolts() {
    return voltmeter.leastReadingFor(Levels.RECEIVER_THRESHOLD_VOLTS);
  }
}
