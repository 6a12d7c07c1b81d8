package org.headhouse.linter;

import java.util.Random;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Assumptions;

/**
 * Many random cases of one test, each from a seed of its own, and the same in every run.
 *
 * <p>The first case that fails is told in one line, with its seed. Given {@code -Dseed=N}, only
 * that case is tried, and tells everything. {@code -Dquick} tries a tenth of the cases, and {@code
 * -Dcases=N} as many as one likes.
 */
public final class RandomCases {
  private static final @Nullable Long SEED = Long.getLong("seed");
  private static final int LONGEST = 240;

  private RandomCases() {}

  /** One case; it fails as a test fails. */
  @FunctionalInterface
  public interface Case<E extends Exception> {
    void tryWith(Random random) throws E;
  }

  /** One case that tells, if it does not fail, whether it was one of those that matter most. */
  @FunctionalInterface
  public interface Sorted<E extends Exception> {
    boolean tryWith(Random random) throws E;
  }

  /** Tries cases. */
  public static <E extends Exception> void each(int cases, Case<E> one) throws E {
    share(
        cases,
        random -> {
          one.tryWith(random);
          return true;
        });
  }

  /**
   * Tries cases.
   *
   * @return the share of those that matter most, 0 to 1: a test in which they are few proves little
   */
  public static <E extends Exception> double share(int cases, Sorted<E> one) throws E {
    if (SEED != null) {
      one.tryWith(random(SEED));
      Assumptions.abort("the seed %d holds, and no other was tried".formatted(SEED));
    }
    int number = number(cases);
    int found = 0;
    for (long seed = 1; seed <= number; seed++) {
      try {
        found += one.tryWith(random(seed)) ? 1 : 0;
      } catch (Exception | Error failure) {
        throw told(seed, failure);
      }
    }
    return (double) found / number;
  }

  private static int number(int cases) {
    boolean quick = System.getProperty("quick") != null;
    return Integer.getInteger("cases", quick ? Math.max(1, cases / 10) : cases);
  }

  /** Seeds that follow each other would give a plain {@code Random} first values much alike. */
  private static Random random(long seed) {
    return new Random(new SplittableRandom(seed).nextLong());
  }

  private static AssertionError told(long seed, Throwable failure) {
    String said = failure.toString().replaceFirst("^\\S*Assertion\\S*Error: ", "");
    String line = said.replaceAll("\\s+", " ").strip();
    if (line.length() > LONGEST) {
      // What was expected often stands at the end, behind a whole site.
      line =
          line.substring(0, LONGEST / 3) + " … " + line.substring(line.length() - LONGEST / 3 * 2);
    }
    AssertionError told =
        new AssertionError("seed %d: %s (to see all of it: -Dseed=%d)".formatted(seed, line, seed));
    told.setStackTrace(failure.getStackTrace());
    return told;
  }
}
