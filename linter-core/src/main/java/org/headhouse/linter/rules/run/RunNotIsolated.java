package org.headhouse.linter.rules.run;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.GalvanicSection;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Run;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/**
 * {@code run.not-isolated}: The RS-485 Design Guide, TI SLLA272, section on grounding and
 * isolation.
 */
public final class RunNotIsolated implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "run.not-isolated",
          "On at least one side of a run between buildings, all interfaces are isolated.",
          Level.WARNING);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (GalvanicSection section : site.galvanicSections()) {
      Finding worst = null;
      List<Finding.Case> runs = new ArrayList<>(0);
      List<ChainItem> items = section.items();
      for (int i = 0; i < items.size() - 1; i++) {
        if (items.get(i).runToNext().is(Run.BETWEEN_BUILDINGS)) {
          Finding one =
              finding(items.subList(0, i + 1), items.subList(i + 1, items.size()), context);
          if (one != null) {
            String certainty = one.level() == null ? null : "not known";
            runs.add(new Finding.Case(items.get(i).name().orNull(), certainty));
          }
          boolean worse =
              worst == null || (worst.level() != null && one != null && one.level() == null);
          worst = one != null && worse ? one : worst;
        }
      }
      if (worst != null) {
        context.report(worst.about(runs));
      }
    }
  }

  /** What a half of a section does to a current between the earths of two buildings. */
  private enum Half {
    /** An interface lets it pass. */
    JOINED,
    /** None is known to let it pass, and of some interface nobody knows. */
    UNKNOWN,
    /** No interface lets it pass. */
    ISOLATED
  }

  private static Half half(List<ChainItem> items) {
    boolean allIsolated = true;
    for (ChainItem item : items) {
      if (item.isolated().is(false)) {
        return Half.JOINED;
      }
      allIsolated = allIsolated && !item.isolated().isMissing();
    }
    return allIsolated ? Half.ISOLATED : Half.UNKNOWN;
  }

  private static @Nullable Finding finding(
      List<ChainItem> before, List<ChainItem> after, RuleContext context) {
    ChainItem from = before.get(before.size() - 1);
    ChainItem to = after.get(0);
    Half near = half(before);
    Half far = half(after);
    if (near == Half.ISOLATED || far == Half.ISOLATED || isIsolatedRepeater(from, to)) {
      return null;
    }
    boolean known = near == Half.JOINED && far == Half.JOINED;
    ChainItem repeater = known ? repeaterOfUnknownIsolation(before, after) : null;
    Finding finding =
        context.finding(
            from.runToNext().place(),
            new Message(
                "the run from "
                    + from.called()
                    + " to "
                    + to.called()
                    + " joins two buildings"
                    + (repeater != null
                        ? ", unless the repeater " + repeater.called() + " isolates them"
                        : known
                            ? ", and neither side is isolated"
                            : "; it is not known whether either side is isolated"),
                "the earth potentials of two buildings differ, most of all when lightning"
                    + " strikes nearby, and the current destroys interfaces",
                remedy(known, repeater)));
    return known ? finding : finding.at(Level.NOTE);
  }

  private static String remedy(boolean known, @Nullable ChainItem repeater) {
    if (repeater != null) {
      return "check its manual, and set isolated: true for it or its type if it does; otherwise"
          + " fit an isolated repeater at one end of the run";
    }
    return known
        ? "fit an isolated repeater at one end of the run, or isolated interfaces at every item"
            + " on one side of it"
        : "check the manuals, and set isolated: true or false for each type; if neither side is"
            + " isolated, fit an isolated repeater at one end of the run";
  }

  /** The nearest one to the run that may isolate the halves, if its type does. */
  private static @Nullable ChainItem repeaterOfUnknownIsolation(
      List<ChainItem> before, List<ChainItem> after) {
    for (int i = 0; i < Math.max(before.size(), after.size()); i++) {
      if (i < before.size() && mayIsolate(before.get(before.size() - 1 - i))) {
        return before.get(before.size() - 1 - i);
      }
      if (i < after.size() && mayIsolate(after.get(i))) {
        return after.get(i);
      }
    }
    return null;
  }

  private static boolean mayIsolate(ChainItem item) {
    return item instanceof Repeater && item.isolated().isMissing();
  }

  private static boolean isIsolatedRepeater(ChainItem from, ChainItem to) {
    return isIsolatedRepeater(from) || isIsolatedRepeater(to);
  }

  private static boolean isIsolatedRepeater(ChainItem item) {
    return item instanceof Repeater && item.isolated().is(true);
  }
}
