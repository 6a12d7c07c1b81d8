package org.headhouse.linter.site;

import org.headhouse.linter.source.Place;
import org.jspecify.annotations.Nullable;

/** An item of the chain: a unit or a repeater, and the run of cable behind it. */
public sealed interface ChainItem permits Unit, Repeater {
  /** Which item it is. */
  Identity identity();

  /** The run of the trunk to the next item. */
  TrunkRun toNext();

  /** The item as a whole. */
  default Place place() {
    return identity().place();
  }

  /** Its place in the chain, from 0. */
  default int index() {
    return identity().index();
  }

  /** The name of the item; those of all items of a chain differ. */
  default Setting<String> name() {
    return identity().name();
  }

  /** The length of the cable to the next item. */
  default Setting<Length> cableToNext() {
    return toNext().length();
  }

  /** Where that cable lies. */
  default Setting<Run> runToNext() {
    return toNext().route();
  }

  /** How that cable is protected. */
  default Setting<SurgeProtection> surgeProtectionToNext() {
    return toNext().protection();
  }

  /**
   * Whether another item of the same chain is this one. Of two sites, or of two states of one, that
   * says nothing. To compare all that is written of both takes long.
   */
  default boolean isSameItemAs(@Nullable ChainItem other) {
    return other != null && index() == other.index();
  }

  /** The name in quotes for a message, or the place in the chain where there is none. */
  default String called() {
    String name = name().orNull();
    return name == null ? "item " + (index() + 1) + " of the chain" : "\"" + name + "\"";
  }
}
