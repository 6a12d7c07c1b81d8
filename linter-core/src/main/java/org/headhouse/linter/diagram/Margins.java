package org.headhouse.linter.diagram;

/**
 * What is wanted over the 200 mV of a receiver.
 *
 * @param idleVolts of an idle line
 * @param receivedVolts of a received signal
 */
public record Margins(double idleVolts, double receivedVolts) {

  /** Where no policy says otherwise (common practice, no source). */
  public static final Margins DEFAULT = new Margins(0.02, 0.1);
}
