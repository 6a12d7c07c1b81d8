package org.headhouse.linter.figures;

import java.util.ArrayList;
import java.util.List;
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

  /** Where a segment is measured: at the head unit or the side out of its repeater, and far off. */
  public static List<MeasuringPlace> ofSegment(SegmentLine line) {
    int near = line.measuredAt();
    int last = line.segment().items().size() - 1;
    List<MeasuringPlace> places = new ArrayList<>(2);
    places.add(new MeasuringPlace(line, near));
    if (last > 0) {
      places.add(new MeasuringPlace(line, near == last ? 0 : last));
    }
    return places;
  }
}
