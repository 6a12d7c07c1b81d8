package org.headhouse.linter.figures;

import org.headhouse.linter.line.BroadcastLoad;
import org.headhouse.linter.line.PollLoad;

/**
 * Times of the traffic that a site's file does not give.
 *
 * @param turnaroundSeconds the pause after a broadcast
 * @param processingSeconds the time of a unit from a request to its answer
 */
public record TransactionTimes(double turnaroundSeconds, double processingSeconds) {

  /** The times where the policy gives none. */
  public static final TransactionTimes DEFAULT =
      new TransactionTimes(BroadcastLoad.TURNAROUND_SECONDS, PollLoad.PROCESSING_SECONDS);
}
