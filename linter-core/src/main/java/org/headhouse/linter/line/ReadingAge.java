package org.headhouse.linter.line;

import java.util.List;
import java.util.OptionalDouble;

/**
 * How old a reading becomes at a follower before the next takes its place, with its parts: {@code A
 * = (lost + 1) · period + r}, where {@code r} is the longest other transaction and the broadcast's
 * frame (computed).
 *
 * <p>A reading is taken when its broadcast is due. So many broadcasts in a row are lost; just
 * before the next one is due another transaction begins and is not interrupted; and the reading is
 * there with the last bit of the frame.
 *
 * @param periodsSeconds {@code (lost + 1) · period}
 * @param otherSeconds the longest other transaction, 0 without one
 * @param frameSeconds the broadcast from its first bit to its last
 */
public record ReadingAge(double periodsSeconds, double otherSeconds, double frameSeconds) {

  /** How many broadcasts in a row may be lost (common practice, no source). */
  public static final int USUAL_LOST = 1;

  /**
   * The worst age.
   *
   * @param others the polls over the same line, by whomever
   * @param lost how many broadcasts in a row are lost, 0 or more
   * @param oneSilent whether one polled unit is silent
   */
  public static ReadingAge worst(
      SerialFormat serial,
      BroadcastLoad broadcast,
      List<PollLoad> others,
      int lost,
      boolean oneSilent) {
    Require.notNegative(lost, "lost broadcasts");
    return new ReadingAge(
        (lost + 1) * broadcast.periodSeconds(),
        longestSeconds(serial, others, oneSilent),
        broadcast.frameSeconds(serial));
  }

  /** The longest that any of the polls holds the line; 0 without any. */
  public static double longestSeconds(
      SerialFormat serial, List<PollLoad> polls, boolean oneSilent) {
    double longest = 0;
    for (PollLoad poll : polls) {
      longest = Math.max(longest, poll.longestSeconds(serial, oneSilent));
    }
    return longest;
  }

  /** From when a broadcast is due until its reading is there: {@code r}. */
  public double overdueSeconds() {
    return otherSeconds + frameSeconds;
  }

  /** The worst age: {@code A}. */
  public double totalSeconds() {
    return periodsSeconds + overdueSeconds();
  }

  /**
   * How old a reading is when a unit gives up waiting for the next, on a line that is dead: {@code
   * r + stale-after} (computed). The last reading came as late as it can.
   *
   * @param staleAfterSeconds how long the unit goes on with a reading
   */
  public double staleSeconds(double staleAfterSeconds) {
    return overdueSeconds() + staleAfterSeconds;
  }

  /**
   * The longest period of the broadcast with which no reading becomes older than an age: {@code
   * (age − r) / (lost + 1)} (computed).
   *
   * @param lost how many broadcasts in a row are lost, 0 or more
   * @return empty where no period is short enough
   */
  public OptionalDouble longestPeriodSeconds(double ageSeconds, int lost) {
    Require.notNegative(lost, "lost broadcasts");
    double longest = (ageSeconds - overdueSeconds()) / (lost + 1);
    return longest > 0 ? OptionalDouble.of(longest) : OptionalDouble.empty();
  }
}
