package org.headhouse.linter.yaml;

import java.util.List;
import org.headhouse.linter.source.Region;
import org.jspecify.annotations.Nullable;

/** A sequence; its items are in the order of the file. */
public record Sequence(Region region, List<Node> items, @Nullable Anchor anchor)
    implements Node.Valued {}
