package org.headhouse.linter.yaml;

import org.headhouse.linter.source.Region;
import org.jspecify.annotations.Nullable;

/**
 * A scalar.
 *
 * @param text its characters after quotes, escapes and folding are undone
 * @param plain whether its type follows from its characters: written without quotes and without the
 *     tag for text
 */
public record Scalar(Region region, String text, boolean plain, @Nullable Anchor anchor)
    implements Node.Valued {

  /** What the scalar is under YAML 1.2's core schema. */
  public CoreType type() {
    return plain ? CoreType.of(text) : CoreType.TEXT;
  }
}
