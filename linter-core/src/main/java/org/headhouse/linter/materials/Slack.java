package org.headhouse.linter.materials;

/**
 * The cable that is ordered beyond the measured lengths: for ends, bends and what is cut off.
 *
 * @param share of the measured lengths, from 0 to 1
 */
public record Slack(double share) {
  /** Common practice, no source. */
  public static final Slack USUAL = new Slack(0.1);

  /** Lengths are added up in floating point: what is a hair over a whole unit is that unit. */
  private static final double HAIR = 1e-6;

  public Slack {
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("a share for slack of " + share);
    }
  }

  /** A number of metres or feet with the slack, rounded up to a whole one. */
  public double wholeUnits(double length) {
    return Math.ceil(length * (1 + share) - HAIR);
  }
}
