package org.headhouse.linter.figures;

import org.headhouse.linter.line.BroadcastLoad;
import org.headhouse.linter.line.PollLoad;

/**
 * What a site's file does not say of its traffic.
 *
 * @param turnaroundSeconds the pause after a broadcast
 * @param processingSeconds what a unit takes from a request to its answer
 */
public record TransactionTimes(double turnaroundSeconds, double processingSeconds) {

  /** Where nobody says otherwise. */
  public static final TransactionTimes DEFAULT =
      new TransactionTimes(BroadcastLoad.TURNAROUND_SECONDS, PollLoad.PROCESSING_SECONDS);
}
