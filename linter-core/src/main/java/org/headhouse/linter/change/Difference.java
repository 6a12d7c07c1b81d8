package org.headhouse.linter.change;

import java.util.List;
import org.headhouse.linter.site.ItemKind;
import org.jspecify.annotations.Nullable;

/**
 * One thing in which two states of a site differ. Items of the chain have their later name; those
 * that left have the one they had.
 */
public sealed interface Difference {

  /**
   * An item that was not there.
   *
   * @param previous the item before it on the chain, or null for the first
   */
  record Added(String item, ItemKind kind, @Nullable String previous) implements Difference {}

  /**
   * An item that is no longer there.
   *
   * @param previous the item that was before it on the chain, or null for the first
   */
  record Removed(String item, ItemKind kind, @Nullable String previous) implements Difference {}

  /**
   * Another device at the place and under the name of one that was there.
   *
   * @param device in what it is another: its type, its serial number, or both
   */
  record Exchanged(String item, ItemKind kind, List<ValueChange> device) implements Difference {
    public Exchanged {
      device = List.copyOf(device);
    }
  }

  /** An item with another name. */
  record Renamed(String item, String from) implements Difference {}

  /** A unit or another device with another server address. */
  record Readdressed(String item, int from, int to) implements Difference {}

  /** A unit with another role. */
  record RoleChanged(String item, ValueChange role) implements Difference {}

  /** Another neighbour, cable, conductor, way round of the pair, or branch. */
  record Rewired(String item, ValueChange wiring) implements Difference {}

  /** Another terminator: fitted, removed, or of another value. */
  record Terminated(String item, ValueChange termination) implements Difference {}

  /** Other bias resistors: fitted, removed, or of another value. */
  record Rebiased(String item, ValueChange bias) implements Difference {}

  /** A reading that is taken from elsewhere; the key is the reading. */
  record Resourced(String item, ValueChange source) implements Difference {}

  /** Another setting of a unit, which neither the line nor the readings depend on. */
  record ItemSet(String item, ValueChange setting) implements Difference {}

  /**
   * Another fact of a type of device that items of the site are of, in the file of device types.
   *
   * @param type its id
   */
  record TypeSet(String type, ValueChange setting) implements Difference {}

  /** Another setting of the whole line. */
  record LineSet(ValueChange setting) implements Difference {}

  /** Anything else that is written of the site. */
  record SiteSet(ValueChange setting) implements Difference {}
}
