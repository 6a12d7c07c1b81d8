package org.headhouse.linter.figures;

import org.headhouse.linter.line.BroadcastLoad;
import org.headhouse.linter.line.PollLoad;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Interval;
import org.jspecify.annotations.Nullable;

/**
 * Times of the traffic that a site's file does not give.
 *
 * @param turnaroundSeconds the pause after a broadcast
 * @param usualProcessingSeconds the longest time of an item from a request to its answer, where its
 *     type says nothing
 */
public record TransactionTimes(double turnaroundSeconds, double usualProcessingSeconds) {

  /** The times where the policy gives none. */
  public static final TransactionTimes DEFAULT =
      new TransactionTimes(BroadcastLoad.TURNAROUND_SECONDS, PollLoad.PROCESSING_SECONDS);

  /**
   * The longest that an item takes from a request to its answer: as its type says, else the usual.
   *
   * @param item null for one that is not on the chain
   */
  public double processingSeconds(@Nullable ChainItem item) {
    Interval ofType = item == null ? null : item.type().serialPort().processing().orNull();
    return ofType == null ? usualProcessingSeconds : ofType.seconds();
  }
}
