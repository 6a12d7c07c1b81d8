package org.headhouse.linter.growth;

import java.util.ArrayList;
import java.util.List;

/** How much work is too much. */
final class GrowthLimits {
  /** Between n log n, which is 2.3 for the numbers here, and the square, which is 4. */
  private static final double MOST_STEP = 2.8;

  /** What is hardly more than for a quarter has reached a limit of its own. */
  private static final double BOUNDED = 2;

  /** Under this, what is done once is all there is. */
  private static final long LITTLE = 2_000_000;

  private GrowthLimits() {}

  /** What is allocated for each byte of a clean site. */
  static double clean() {
    return Growth.of(Growing.UNITS, 1).forAByte();
  }

  /**
   * What is wrong with a growth.
   *
   * @param clean what is allocated for each byte of a clean site
   */
  static List<String> broken(Growth growth, double clean) {
    List<String> broken = new ArrayList<>();
    Growing growing = growth.growing();
    long grown = growth.four().allocated() - growth.one().allocated();
    if (growth.step() > MOST_STEP && growth.ratio() > BOUNDED && grown > LITTLE) {
      broken.add("grows faster than n log n: " + growth.step());
    }
    if (growth.forAByte() > growing.budget().timesClean * clean) {
      broken.add("a byte takes " + growth.forAByte() + " bytes, in a clean site " + clean);
    }
    double most =
        growing.budget().most + growing.budget().timesClean * clean * growth.four().bytes();
    if (growth.four().allocated() > most) {
      broken.add("takes " + growth.four().allocated() + " bytes, at most are " + most);
    }
    return broken;
  }
}
