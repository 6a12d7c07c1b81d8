package org.headhouse.linter.rules.conductors;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Connection;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;

/**
 * The line terminals of one item, or those of one side of a repeater.
 *
 * @param called the item in words, with the side where a repeater says it of each side alone
 */
record Terminals(ChainItem item, Connection connection, String called) {

  /** Those of all items along the chain; a repeater has one or two. */
  static List<Terminals> of(Site site) {
    List<Terminals> all = new ArrayList<>(site.items().size());
    for (ChainItem item : site.items()) {
      if (item instanceof Repeater repeater) {
        addSides(repeater, all);
      } else {
        all.add(new Terminals(item, item.connection(Side.IN), item.called()));
      }
    }
    return all;
  }

  private static void addSides(Repeater repeater, List<Terminals> all) {
    Connection in = repeater.in();
    Connection out = repeater.out();
    // What is written once for both sides is one thing to mend.
    boolean same =
        Objects.equals(in.conductors(), out.conductors()) && Objects.equals(in.pair(), out.pair());
    if (same) {
      all.add(new Terminals(repeater, in, repeater.called()));
    } else {
      all.add(new Terminals(repeater, in, "the side in of " + repeater.called()));
      all.add(new Terminals(repeater, out, "the side out of " + repeater.called()));
    }
  }
}
