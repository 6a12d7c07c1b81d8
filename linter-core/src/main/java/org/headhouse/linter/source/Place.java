package org.headhouse.linter.source;

import org.jspecify.annotations.Nullable;

/**
 * Where a value stands for the reader of the file.
 *
 * <p>A value that is written out stands at its region. A value that came through an alias stands at
 * the alias; {@link #anchored()} then tells where it is written.
 */
public sealed interface Place permits Region, Place.ThroughAlias {

  /** What to point at: the value, or the alias that brought it. */
  Region region();

  /** The other end of the alias, or null where the value is written out. */
  @Nullable Anchored anchored();

  /**
   * The written end of an alias.
   *
   * @param name the anchor's name, without the ampersand
   * @param anchor where the anchor stands
   * @param value where the value stands inside the anchored node
   */
  record Anchored(String name, Region anchor, Region value) {}

  /** The place of a value that an alias brought. */
  record ThroughAlias(Region region, Anchored anchored) implements Place {}

  /** The place of a value that is written out. */
  static Place at(Region region) {
    return region;
  }
}
