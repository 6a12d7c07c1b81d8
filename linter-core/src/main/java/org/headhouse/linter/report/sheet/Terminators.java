package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Segment;
import org.headhouse.linter.site.Site;

/** The terminators that are back in place before power returns. */
final class Terminators {
  private Terminators() {}

  /** In the order of the chain: {@code 120 ohm at Road Cabinet, side in}. */
  static List<String> of(Site site) {
    List<String> fitted = new ArrayList<>();
    for (Segment segment : site.segments()) {
      for (ChainItem item : segment.items()) {
        String side = item instanceof Repeater ? ", side " + segment.side(item).word() : "";
        segment
            .termination(item)
            .optional()
            .filter(termination -> termination.isFitted())
            .ifPresent(
                termination ->
                    fitted.add(termination.written() + " at " + PlainText.name(item) + side));
      }
    }
    return fitted;
  }
}
