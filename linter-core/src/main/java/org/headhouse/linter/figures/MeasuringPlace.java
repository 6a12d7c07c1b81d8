package org.headhouse.linter.figures;

import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * An item at whose terminals a meter is held; of a repeater, those of one side.
 *
 * @param line the segment whose pair it is
 * @param index of the item in the segment
 */
@Internal
public record MeasuringPlace(SegmentLine line, int index) {

  /** The item. */
  public ChainItem item() {
    return line.segment().items().get(index);
  }

  /** The side of a repeater; null of any other item. */
  public @Nullable Side side() {
    return item() instanceof Repeater ? line.segment().side(item()) : null;
  }

  /** For a message: {@code "Hardening Bay"}, {@code "Boiler Room", side out}. */
  public String called() {
    Side side = side();
    return item().called() + (side == null ? "" : ", side " + side.word());
  }
}
