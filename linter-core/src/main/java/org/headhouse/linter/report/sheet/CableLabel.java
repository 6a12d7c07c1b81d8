package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Setting;
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
    List<ChainItem> items = site.items();
    int number = 0;
    for (int i = 0; i < items.size(); i++) {
      ChainItem item = items.get(i);
      Setting<Length> stub = item.connection(Side.IN).stub();
      if (!stub.isMissing()) {
        number++;
        both(tap(item), PlainText.wholeName(item), cable(number, stub, measure), labels);
      }
      if (i + 1 < items.size()) {
        number++;
        both(
            end(item, Side.OUT),
            end(items.get(i + 1), Side.IN),
            cable(number, item.cableToNext(), measure),
            labels);
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

  private static String cable(int number, Setting<Length> setting, Measure measure) {
    Length length = setting.orNull();
    return "Cable "
        + number
        + ", "
        + (length == null ? "length not known" : measure.length(length.metres()));
  }
}
