package org.headhouse.linter.yaml;

import java.util.List;
import org.headhouse.linter.source.Region;
import org.jspecify.annotations.Nullable;

/**
 * A mapping with its merge keys followed.
 *
 * @param entries the mapping's own entries in the order of the file, each key once, then those that
 *     merge keys bring and the mapping does not have itself
 */
public record Mapping(Region region, List<Entry> entries, @Nullable Anchor anchor)
    implements Node.Valued {

  /**
   * One key and its value.
   *
   * @param via the alias of the merge key that brought the entry, or null for the mapping's own
   */
  public record Entry(Scalar key, Node value, @Nullable Alias via) {}
}
