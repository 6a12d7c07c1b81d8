package org.headhouse.linter.line;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/** How long a branch from the trunk to a unit may be. */
@Internal
public final class StubLimit {

  /** MODBUS over Serial Line V1.02 §3.4.3. */
  public static final double LONGEST_METRES = 20;

  /**
   * The slower end of the usual 0.66 to 0.78 of the speed of light in a pair: it gives the shorter
   * limit, so it holds where the cable says nothing.
   */
  public static final double LEAST_VELOCITY_FACTOR = 0.66;

  /** In a vacuum. */
  public static final double SPEED_OF_LIGHT_METRES_PER_SECOND = 299_792_458;

  private static final double SHARE_OF_RISE = 0.1;

  private StubLimit() {}

  /**
   * The length that a signal passes in a tenth of its rise: {@code L = 0.1 · t_r · v · c} (data
   * sheet SN65HVD1x, Texas Instruments, table of stub lengths).
   *
   * @param riseSeconds of the line driver, 10 to 90 %
   * @param velocityFactor the speed in the cable as a share of that of light
   */
  public static double metres(double riseSeconds, double velocityFactor) {
    Require.positive(riseSeconds, "rise time");
    Require.positive(velocityFactor, "velocity factor");
    return SHARE_OF_RISE * riseSeconds * velocityFactor * SPEED_OF_LIGHT_METRES_PER_SECOND;
  }

  /**
   * How long a stub may be at all: 20 m, or less where the quickest line driver asks for it.
   *
   * @param riseSeconds of the quickest line driver, 10 to 90 %; null where none is known
   * @param velocityFactor of the cable; {@link #LEAST_VELOCITY_FACTOR} where it says nothing
   */
  public static double longestMetres(@Nullable Double riseSeconds, double velocityFactor) {
    return riseSeconds == null
        ? LONGEST_METRES
        : Math.min(LONGEST_METRES, metres(riseSeconds, velocityFactor));
  }
}
