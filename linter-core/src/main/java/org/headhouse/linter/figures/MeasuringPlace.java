package org.headhouse.linter.figures;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.MeasuredAt;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
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

  /** The head unit; the start of the line where there is not exactly one. Null without items. */
  public static @Nullable MeasuringPlace ofHead(Site site, LineFigures figures) {
    List<SegmentLine> segments = figures.segments();
    Unit head = site.head();
    for (SegmentLine line : segments) {
      if (line.segment().items().stream().anyMatch(item -> item.isSameItemAs(head))) {
        return new MeasuringPlace(line, line.measuredAt());
      }
    }
    return segments.isEmpty() ? null : new MeasuringPlace(segments.get(0), 0);
  }

  /**
   * Where something was measured elsewhere. At a repeater that says no side it is the side away
   * from the start of the chain, as with bias.
   *
   * @return null where there is no such item or side
   */
  public static @Nullable MeasuringPlace of(MeasuredAt measured, LineFigures figures) {
    String at = measured.at().orNull();
    if (at == null || measured.side().isFaulty()) {
      return null;
    }
    Side side = measured.side().or(Side.OUT);
    for (SegmentLine line : figures.segments()) {
      List<ChainItem> items = line.segment().items();
      for (int index = 0; index < items.size(); index++) {
        MeasuringPlace place = new MeasuringPlace(line, index);
        if (items.get(index).name().is(at) && (place.side() == null || place.side() == side)) {
          return place;
        }
      }
    }
    return null;
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
