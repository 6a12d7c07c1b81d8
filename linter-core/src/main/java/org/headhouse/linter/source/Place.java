package org.headhouse.linter.source;

import org.jspecify.annotations.Nullable;

/**
 * Where a value stands for the reader of the file.
 *
 * <p>A value that is written out stands where it is written. A value that came through an alias
 * stands at the alias; {@link #anchored()} then tells where it is written.
 *
 * @param region what to point at: the value, or the alias that brought it
 * @param anchored the other end of the alias, or null where the value is written out
 */
public record Place(Region region, @Nullable Anchored anchored) {

  /**
   * The written end of an alias.
   *
   * @param name the anchor's name, without the ampersand
   * @param anchor where the anchor stands
   * @param value where the value stands inside the anchored node
   */
  public record Anchored(String name, Region anchor, Region value) {}

  /** The place of a value that is written out. */
  public static Place at(Region region) {
    return new Place(region, null);
  }
}
