package org.headhouse.linter.report.sheet;

import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.Pair;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/**
 * Where the two conductors of the pair go at one unit. D1 is the one that is positive against the
 * other on an idle, biased line (MODBUS over Serial Line V1.02 calls them D1 and D0).
 *
 * @param positive the terminal for D1
 * @param negative the terminal for D0
 * @param note how this compares with the marks at the head unit
 */
record LandedPair(String positive, String negative, String note) {

  static LandedPair of(ChainItem unit, Site site) {
    Unit head = site.head();
    Conductor atHead = head == null ? null : positive(head, null);
    Conductor here = positive(unit, atHead);
    return new LandedPair(
        PlainText.name(unit.type().mark(here)),
        PlainText.name(unit.type().mark(other(here))),
        note(unit, head, atHead, here));
  }

  /** By the marks of its type; without a known type, by the conductors in the file. */
  private static Conductor positive(ChainItem unit, @Nullable Conductor atHead) {
    if (unit.type().isKnown() || atHead == null) {
      return unit.type().positiveTerminal();
    }
    return unit.connection(Side.IN).pair().is(Pair.CROSSED) ? other(atHead) : atHead;
  }

  private static Conductor other(Conductor terminal) {
    return terminal == Conductor.A ? Conductor.B : Conductor.A;
  }

  private static String note(
      ChainItem unit, @Nullable Unit head, @Nullable Conductor atHead, Conductor here) {
    if (!unit.type().isKnown()) {
      return "assumed: see its manual";
    }
    if (unit.isSameItemAs(head)) {
      return "";
    }
    if (atHead == null) {
      return "no single head unit";
    }
    String landed = here == atHead ? "straight" : "crossed";
    boolean written = unit.connection(Side.IN).pair().is(Pair.CROSSED);
    return written == (here != atHead)
        ? landed
        : landed + "; in the file " + (written ? "crossed" : "straight");
  }
}
