package org.headhouse.linter.materials;

import java.util.List;
import org.headhouse.linter.figures.Measure;
import org.jspecify.annotations.Nullable;

/**
 * How much of one material there is.
 *
 * @param type distinguishes materials of a kind, such as {@code 120 ohm}; empty where the file says
 *     nothing that does
 * @param amount metres of cable, or a number of pieces: of all that can be counted; null where
 *     nothing can
 * @param notCounted what the amount lacks, and why, one clause for each place
 */
public record MaterialCount(
    Material material, String type, @Nullable Double amount, List<String> notCounted) {

  public MaterialCount {
    notCounted = List.copyOf(notCounted);
  }

  /** Whether nothing is missing from the amount. */
  public boolean isComplete() {
    return notCounted.isEmpty();
  }

  /** The amount in a unit of length, or in pieces; null where nothing can be counted. */
  public @Nullable Double amountIn(Measure measure) {
    return amount == null || !material.isLength() ? amount : (Double) measure.lengthOf(amount);
  }

  /**
   * What is to be ordered of all that can be counted: cable with its slack in whole metres or feet,
   * and pieces as they are counted. Null where nothing can be counted.
   */
  public @Nullable Double toOrder(Measure measure, Slack slack) {
    Double counted = amountIn(measure);
    return counted == null || !material.isLength() ? counted : (Double) slack.wholeUnits(counted);
  }
}
