package org.headhouse.linter.source;

import org.jspecify.annotations.Nullable;

/**
 * Where a value is in the file.
 *
 * <p>The place of a value that is written out is its region. The place of one that came through an
 * alias is the alias; {@link #anchored()} then has the place where it is written. That of one that
 * a default gives is the name of what takes it.
 */
public sealed interface Place permits Region, Place.ThroughAlias, Place.ThroughDefault {

  /** What to point at: the value, or the alias that brought it. */
  Region region();

  /** The other end of the alias, or null where the value is written out. */
  @Nullable Anchored anchored();

  /**
   * The written end of an alias.
   *
   * @param name the anchor's name, without the ampersand; empty for a default
   * @param anchor where the anchor is
   * @param value where the value is inside the anchored node
   */
  record Anchored(String name, Region anchor, Region value) {}

  /** The place of a value that an alias brought. */
  record ThroughAlias(Region region, Anchored anchored) implements Place {}

  /** The place of a value that a default gives to what is named in a region. */
  record ThroughDefault(Region region, Anchored anchored) implements Place {}

  /** The place of a value that is written out. */
  static Place at(Region region) {
    return region;
  }
}
