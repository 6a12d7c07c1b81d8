package org.headhouse.linter.diagnosis;

import java.util.List;
import org.headhouse.linter.site.Side;
import org.jspecify.annotations.Nullable;

/**
 * A fault as people find it.
 *
 * @param fault its word, such as {@code terminator-missing}
 * @param at the names of the item, or of the two items of the hop
 * @param side of a repeater; null of anything else
 * @param conductors {@code D0}, {@code D1} or both, where that makes a difference
 */
public record NamedFault(
    String fault, List<String> at, @Nullable Side side, List<String> conductors) {

  public NamedFault {
    at = List.copyOf(at);
    conductors = List.copyOf(conductors);
  }
}
