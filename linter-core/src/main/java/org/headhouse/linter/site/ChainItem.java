package org.headhouse.linter.site;

import org.headhouse.linter.source.Place;
import org.jspecify.annotations.Nullable;

/** An item of the chain: a unit or a repeater, and the run of cable behind it. */
public sealed interface ChainItem permits Unit, Repeater {

  /** The item as a whole. */
  Place place();

  /** Its place in the chain, from 0. */
  int index();

  /** The name of the unit or of the repeater. */
  Setting<String> name();

  /** The length of the cable to the next item. */
  Setting<Length> cableToNext();

  /** Where that cable lies. */
  Setting<Run> runToNext();

  /** How that cable is protected. */
  Setting<SurgeProtection> surgeProtectionToNext();

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
