package org.headhouse.linter.fault;

import org.headhouse.linter.line.MeterAccuracy;
import org.jspecify.annotations.Nullable;

/**
 * A state that the segment may be in, and what a meter shows in it. For one thread.
 *
 * <p>A fault has one for each way in which it can look.
 */
final class Hypothesis {
  private final @Nullable Fault fault;
  private final Expectation expectation;
  private final Meters meters;

  /**
   * @param fault null for the segment as it is written
   */
  Hypothesis(@Nullable Fault fault, FaultyPair pair, Meters meters) {
    this.fault = fault;
    this.expectation = new Expectation(pair);
    this.meters = meters;
  }

  @Nullable Fault fault() {
    return fault;
  }

  /** All readings that a meter may give. */
  Span shown(Measurement measurement) {
    Span there = expectation.of(measurement);
    MeterAccuracy meter =
        measurement.quantity().isResistance() ? meters.ohmmeter() : meters.voltmeter();
    var readings = meter.readings(there.low(), there.high());
    return new Span(readings.low(), readings.high());
  }

  /** Whether the meter may have shown all of some readings. */
  boolean fits(Iterable<MeterReading> readings) {
    for (MeterReading reading : readings) {
      if (!shown(reading.measurement()).meets(reading.span())) {
        return false;
      }
    }
    return true;
  }
}
