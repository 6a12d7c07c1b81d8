package org.headhouse.linter.growth;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The growth of work for larger numbers than the build has, with the time of the processor. */
public final class LongGrowth {
  /** What hundreds of are tried in the build can be so many times as many within a file. */
  private static final int TIMES = 5;

  private static final int HUNDREDS = 200;

  /** Four times as many take four times as long, sixteen times where time grows with the square. */
  private static final double MOST_RATIO = 8;

  private static final long SHORT = 50_000_000;
  private static final long LONGEST = 5_000_000_000L;

  private LongGrowth() {}

  /** Prints what it measures; whether all of it is within the limits. */
  @SuppressWarnings("SystemOut")
  public static boolean isLimited() {
    double clean = GrowthLimits.clean();
    boolean sound = true;
    for (Growing growing : Growing.values()) {
      int times = growing.few() < HUNDREDS ? 1 : TIMES;
      // Once more where the code is compiled.
      Growth.of(growing, times);
      Growth growth = Growth.of(growing, times);
      List<String> broken = new ArrayList<>(GrowthLimits.broken(growth, clean));
      broken.addAll(tooLong(growth));
      sound &= broken.isEmpty();
      System.out.printf(
          Locale.ROOT,
          "%s %d ms %s%n",
          growth.row(clean),
          growth.four().nanoseconds() / 1_000_000,
          String.join("; ", broken));
    }
    return sound;
  }

  private static List<String> tooLong(Growth growth) {
    long one = growth.one().nanoseconds();
    long four = growth.four().nanoseconds();
    if (four > LONGEST) {
      return List.of("takes " + four / 1_000_000 + " ms");
    }
    return four > MOST_RATIO * Math.max(one, SHORT)
        ? List.of("takes " + four / Math.max(1, one) + " times as long")
        : List.of();
  }
}
