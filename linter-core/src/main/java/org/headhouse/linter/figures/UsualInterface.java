package org.headhouse.linter.figures;

/**
 * What the line interface of a device is taken to have where its type says nothing (common
 * practice, no source).
 *
 * @param riseSeconds of its line driver, 10 to 90 %
 * @param receiverFarads of its receiver
 */
public record UsualInterface(double riseSeconds, double receiverFarads) {

  /** Where the policy says nothing. */
  public static final UsualInterface DEFAULT = new UsualInterface(100e-9, 50e-12);
}
