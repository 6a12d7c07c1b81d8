package org.headhouse.linter.figures;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.MeasuredAt;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/** Finds where a record says that something was measured; all places of a line in O(n). */
@Internal
public final class MeasuringPlaces {
  private final List<SegmentLine> segments;
  private final @Nullable MeasuringPlace head;
  private @Nullable Map<String, List<MeasuringPlace>> byName;

  /** The places of a site's line. */
  public MeasuringPlaces(Site site, LineFigures figures) {
    this.segments = figures.segments();
    this.head = head(segments, site.head());
  }

  private static @Nullable MeasuringPlace head(List<SegmentLine> segments, @Nullable Unit head) {
    for (SegmentLine line : segments) {
      if (head != null && line.segment().contains(head)) {
        return new MeasuringPlace(line, line.measuredAt());
      }
    }
    return segments.isEmpty() ? null : new MeasuringPlace(segments.get(0), 0);
  }

  /** The head unit; the start of the line where there is not exactly one. Null without items. */
  @Nullable MeasuringPlace ofHead() {
    return head;
  }

  /**
   * Where something was measured elsewhere. At a repeater that says no side it is the side away
   * from the start of the chain, as with bias.
   *
   * @return the first of that name; null where there is no such item or side
   */
  @Nullable MeasuringPlace of(MeasuredAt measured) {
    return of(measured.at(), measured.side());
  }

  /** The same of a name and a side. */
  public @Nullable MeasuringPlace of(Setting<String> name, Setting<Side> ofRepeater) {
    String at = name.orNull();
    if (at == null || ofRepeater.isFaulty()) {
      return null;
    }
    Side side = ofRepeater.or(Side.OUT);
    for (MeasuringPlace place : byName().getOrDefault(at, List.of())) {
      if (place.side() == null || place.side() == side) {
        return place;
      }
    }
    return null;
  }

  private Map<String, List<MeasuringPlace>> byName() {
    Map<String, List<MeasuringPlace>> known = byName;
    if (known == null) {
      known = new HashMap<>();
      for (SegmentLine line : segments) {
        List<ChainItem> items = line.segment().items();
        for (int index = 0; index < items.size(); index++) {
          String name = items.get(index).name().orNull();
          if (name != null) {
            known
                .computeIfAbsent(name, any -> new ArrayList<>(1))
                .add(new MeasuringPlace(line, index));
          }
        }
      }
      byName = known;
    }
    return known;
  }
}
