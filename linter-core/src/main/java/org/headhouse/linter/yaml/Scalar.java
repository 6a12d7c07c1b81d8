package org.headhouse.linter.yaml;

import org.headhouse.linter.source.Region;
import org.jspecify.annotations.Nullable;

/**
 * A scalar.
 *
 * @param text its characters after quotes, escapes and folding are undone
 * @param plain whether its type follows from its characters: written without quotes and without the
 *     tag for text
 * @param type what the scalar is under YAML 1.2's core schema
 */
public record Scalar(
    Region region, String text, boolean plain, CoreType type, @Nullable Anchor anchor)
    implements Node.Valued {

  /** A scalar whose type follows from its characters where it is plain, and is text otherwise. */
  static Scalar of(Region region, String text, boolean plain, @Nullable Anchor anchor) {
    return new Scalar(region, text, plain, plain ? CoreType.of(text) : CoreType.TEXT, anchor);
  }
}
