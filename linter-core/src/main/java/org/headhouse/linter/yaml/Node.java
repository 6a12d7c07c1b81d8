package org.headhouse.linter.yaml;

import org.headhouse.linter.source.Region;
import org.jspecify.annotations.Nullable;

/** A node of a tree in which every node has its region. */
public sealed interface Node permits Node.Valued, Alias {

  /** Where the node is written, without its anchor and tag. */
  Region region();

  /** A node that is written out, so that it may have an anchor. */
  sealed interface Valued extends Node permits Scalar, Sequence, Mapping {
    /** The anchor before the node, or null. */
    @Nullable Anchor anchor();
  }

  /**
   * A name that aliases refer to.
   *
   * @param region the ampersand and the name
   */
  record Anchor(String name, Region region) {}
}
