package org.headhouse.linter.fault;

/**
 * What a meter showed.
 *
 * @param value in ohms or volts
 * @param digit what one step of its last digit is worth, as it was written down
 */
public record MeterReading(Measurement measurement, double value, double digit) {

  /** All that the meter may have found before it was rounded, or cut off, to the last digit. */
  Span span() {
    return new Span(value - digit, value + digit);
  }
}
