package org.headhouse.linter.yaml;

import org.headhouse.linter.source.Region;

/**
 * A reference to a node written earlier.
 *
 * @param region the asterisk and the name; of a default what takes it
 * @param target the node that the name stands for, which has an anchor; or the defaults
 * @param isDefault whether nothing is written, and the target is taken as a default
 */
public record Alias(Region region, Node.Valued target, boolean isDefault) implements Node {

  Alias(Region region, Node.Valued target) {
    this(region, target, false);
  }

  /** What brings defaults to something that is written in a region. */
  public static Alias ofDefault(Region taker, Node.Valued defaults) {
    return new Alias(taker, defaults, true);
  }
}
