package org.headhouse.linter.change;

import org.jspecify.annotations.Nullable;

/**
 * What stands on a simulated line, as the file of one state has it.
 *
 * @param name in the later state, where it is there
 * @param address null for what has none, or has no module
 * @param in whether it has a terminator; of a repeater, on the side in
 * @param out whether a repeater has a terminator on the side out
 * @param isProtected whether the run to the next item has surge protectors
 */
record LiveItem(
    String name,
    Kind kind,
    @Nullable Integer address,
    boolean head,
    boolean vents,
    boolean in,
    boolean out,
    boolean isProtected,
    String type) {

  enum Kind {
    UNIT,
    REPEATER,
    EQUIPMENT,
    CONVERTER
  }

  /** A unit or a repeater of the plain states. */
  static LiveItem of(States.Item item, boolean first, boolean end) {
    return new LiveItem(
        item.name(),
        item.isRepeater() ? Kind.REPEATER : Kind.UNIT,
        item.isRepeater() ? null : item.address(),
        first,
        true,
        item.isRepeater() || end,
        item.isRepeater(),
        false,
        item.more().toString());
  }
}
