package org.headhouse.linter.yaml;

import org.headhouse.linter.source.Region;

/**
 * A reference to a node written earlier.
 *
 * @param region the asterisk and the name
 * @param target the node that the name stands for; it has an anchor
 */
public record Alias(Region region, Node.Valued target) implements Node {}
