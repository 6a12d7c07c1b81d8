package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.site.CableRun;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;

/**
 * A label for one end of a cable.
 *
 * @param here where this end is connected
 * @param there where the other end is
 * @param cable its number along the chain and its length
 */
record CableLabel(String here, String there, String cable) {

  /** Both ends of every cable, along the chain; the cable of a branch after the one before it. */
  static List<CableLabel> of(Site site, Measure measure) {
    List<CableLabel> labels = new ArrayList<>();
    for (CableRun run : CableRun.of(site)) {
      String cable = cable(run, measure);
      if (run.isBranch()) {
        both(tap(run.from()), PlainText.wholeName(run.to()), cable, labels);
      } else {
        both(end(run.from(), Side.OUT), end(run.to(), Side.IN), cable, labels);
      }
    }
    return labels;
  }

  private static void both(String one, String other, String cable, List<CableLabel> labels) {
    labels.add(new CableLabel(one, other, cable));
    labels.add(new CableLabel(other, one, cable));
  }

  /** The trunk passes an item on a branch at its tap. */
  private static String end(ChainItem item, Side side) {
    if (item instanceof Repeater) {
      return PlainText.wholeName(item) + ", side " + side.word();
    }
    return item.connection(Side.IN).stub().isMissing() ? PlainText.wholeName(item) : tap(item);
  }

  private static String tap(ChainItem item) {
    return "Tap of " + PlainText.wholeName(item);
  }

  private static String cable(CableRun run, Measure measure) {
    Length length = run.length().orNull();
    return "Cable "
        + run.number()
        + ", "
        + (length == null ? "length not known" : measure.length(length.metres()));
  }
}
