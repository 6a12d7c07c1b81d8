package org.headhouse.linter.line;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * From the gust until the vents of a unit are shut, at worst, with its parts (computed). A part
 * that is not known is null, never 0: the total is then only what is known of it.
 *
 * @param averagingSeconds over which the station averages wind
 * @param broadcastSeconds until the next reading has come, {@link ReadingAge#totalSeconds}
 * @param staleSeconds until the unit gives up waiting, {@link ReadingAge#staleSeconds}
 * @param closeSeconds from a reading over the limit until the slowest vent is shut
 * @param isComplete whether every part is known that the sum needs
 */
public record ClosingTime(
    @Nullable Double averagingSeconds,
    @Nullable Double broadcastSeconds,
    @Nullable Double staleSeconds,
    @Nullable Double closeSeconds,
    boolean isComplete) {
  @Internal
  public ClosingTime {}

  /** Of the head unit, to which the station is wired: {@code averaging + close-time}. */
  public static ClosingTime ofHeadUnit(
      @Nullable Double averagingSeconds, @Nullable Double closeSeconds) {
    return new ClosingTime(
        averagingSeconds,
        null,
        null,
        closeSeconds,
        averagingSeconds != null && closeSeconds != null);
  }

  /**
   * Of a follower that closes on a reading over the limit, and where readings stay away: {@code
   * averaging + max(A, r + stale-after) + close-time}. The line may go dead at any moment; the
   * vents then close only once the unit has waited.
   *
   * @param age of the readings, null without a broadcast that is known
   * @param staleAfterSeconds how long the unit goes on with a reading
   */
  public static ClosingTime ofFollower(
      @Nullable Double averagingSeconds,
      @Nullable ReadingAge age,
      @Nullable Double staleAfterSeconds,
      @Nullable Double closeSeconds) {
    return new ClosingTime(
        averagingSeconds,
        age == null ? null : age.totalSeconds(),
        age == null || staleAfterSeconds == null ? null : age.staleSeconds(staleAfterSeconds),
        closeSeconds,
        averagingSeconds != null
            && age != null
            && staleAfterSeconds != null
            && closeSeconds != null);
  }

  /**
   * Of a follower that does not close where readings stay away: {@code averaging + A + close-time}.
   * On a dead line it never closes, which is a fault of its own.
   */
  public static ClosingTime ofFollowerThatStays(
      @Nullable Double averagingSeconds, @Nullable ReadingAge age, @Nullable Double closeSeconds) {
    return new ClosingTime(
        averagingSeconds,
        age == null ? null : age.totalSeconds(),
        null,
        closeSeconds,
        averagingSeconds != null && age != null && closeSeconds != null);
  }

  /** The same time where one of its parts may be longer than it says. */
  public ClosingTime leftOpen() {
    return new ClosingTime(averagingSeconds, broadcastSeconds, staleSeconds, closeSeconds, false);
  }

  /** The longer of the two waits, as far as they are known. */
  public double waitingSeconds() {
    return Math.max(known(broadcastSeconds), known(staleSeconds));
  }

  /** Whether a dead line, and not a lost broadcast, is the longer wait. */
  public boolean isLongestOnDeadLine() {
    return known(staleSeconds) > known(broadcastSeconds);
  }

  /** The sum of what is known. */
  public double totalSeconds() {
    return known(averagingSeconds) + waitingSeconds() + known(closeSeconds);
  }

  private static double known(@Nullable Double seconds) {
    return seconds == null ? 0 : seconds;
  }
}
