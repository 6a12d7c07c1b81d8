package org.headhouse.linter.figures;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Segment;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;

/** Assigns bias to segments. */
public final class SegmentBias {
  private SegmentBias() {}

  /**
   * The bias entries whose item is in a segment. Bias at a repeater is on the side away from the
   * head unit, unless the file gives another side or nothing follows.
   *
   * @param endsChain whether no segment follows
   */
  public static List<Bias> of(Segment segment, boolean endsChain, LineSettings line) {
    List<Bias> all = line.bias().or(List.of());
    List<Bias> here = new ArrayList<>();
    for (Bias bias : all) {
      if (itemOf(bias, segment, endsChain) >= 0) {
        here.add(bias);
      }
    }
    return here;
  }

  /** Whether every bias is at an item of the chain. */
  static boolean arePlaced(LineSettings line, Site site) {
    Set<String> names = new HashSet<>();
    site.items().forEach(item -> names.add(item.name().or("")));
    return line.bias().or(List.of()).stream()
        .noneMatch(bias -> bias.at().isFaulty() || !names.contains(bias.at().or("")));
  }

  /** The index of the item that a bias is fitted at, or -1. */
  static int itemOf(Bias bias, Segment segment, boolean endsChain) {
    String at = bias.at().orNull();
    if (at != null) {
      for (int i = 0; i < segment.items().size(); i++) {
        ChainItem item = segment.items().get(i);
        if (item.name().is(at)) {
          return isOnOtherSide(bias, item, segment, endsChain) ? -1 : i;
        }
      }
    }
    return -1;
  }

  private static boolean isOnOtherSide(
      Bias bias, ChainItem item, Segment segment, boolean endsChain) {
    if (!(item instanceof Repeater)) {
      return false;
    }
    Side side = bias.side().orNull();
    return side == null
        ? item.isSameItemAs(segment.last()) && !endsChain
        : side != segment.side(item);
  }
}
