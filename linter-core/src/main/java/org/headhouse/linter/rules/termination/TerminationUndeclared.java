package org.headhouse.linter.rules.termination;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** {@code termination.undeclared}. */
public final class TerminationUndeclared implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "termination.undeclared",
          "Every unit, and each side of every repeater, says whether it has a terminator.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (ChainItem item : site.items()) {
      boolean isOpen = item.connection(Side.IN).termination().isMissing();
      if (!(item instanceof Repeater) && item.name().isGiven() && isOpen) {
        context.report(
            context
                .finding(
                    item.name().place(), message(item.called(), "termination: none or its value"))
                .fixedBy(isBetweenEnds(item, site) ? none(item) : null));
      }
      if (item instanceof Repeater repeater) {
        check(repeater, context);
      }
    }
  }

  private static boolean isBetweenEnds(ChainItem item, Site site) {
    return site.segments().stream().noneMatch(segment -> segment.endsAt(item));
  }

  private static FixDraft none(ChainItem item) {
    return FixDraft.onSite(
        "Say that " + item.called() + " has no terminator",
        Edit.addKey(
            item.place(),
            item instanceof Unit ? "conductors" : item.kind().word(),
            "termination",
            "none"));
  }

  private static void check(Repeater repeater, RuleContext context) {
    boolean in = repeater.terminationIn().isMissing();
    boolean out = repeater.terminationOut().isMissing();
    if (in || out) {
      String side = in && out ? "" : in ? " on side in" : " on side out";
      List<Finding.Case> open = new ArrayList<>(2);
      for (Side one : Side.values()) {
        if (repeater.connection(one).termination().isMissing()) {
          open.add(new Finding.Case(repeater.name().orNull(), one.word()));
        }
      }
      context.report(
          context
              .finding(
                  in && out ? repeater.name().place() : repeater.termination(),
                  message(repeater.called() + side, "termination: {in: 120 ohm, out: 120 ohm}"))
              .about(open));
    }
  }

  private static Message message(String called, String remedy) {
    return new Message(
        "the file does not say whether " + called + " has a terminator",
        "a missing or a third terminator gives errors that come and go",
        "check it on site, then set " + remedy);
  }
}
