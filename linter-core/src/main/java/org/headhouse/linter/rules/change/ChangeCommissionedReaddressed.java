package org.headhouse.linter.rules.change;

import org.headhouse.linter.change.Difference;
import org.headhouse.linter.change.SiteDifferences;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.ChangeRule;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** {@code change.commissioned-readdressed}. */
public final class ChangeCommissionedReaddressed implements ChangeRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "change.commissioned-readdressed",
          "A unit of a commissioned site keeps its address.",
          Level.WARNING);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site before, Site after, RuleContext context) {
    if (!before.wasCommissioned()) {
      return;
    }
    for (Difference difference : SiteDifferences.between(before, after)) {
      if (difference instanceof Difference.Readdressed moved) {
        Unit unit = after.unit(moved.item());
        if (unit != null) {
          report(unit, moved, context);
        }
      }
    }
  }

  private static void report(Unit unit, Difference.Readdressed moved, RuleContext context) {
    context.report(
        context
            .finding(
                unit.address().place(),
                new Message(
                    "the live unit \""
                        + moved.item()
                        + "\" changes from address "
                        + moved.from()
                        + " to "
                        + moved.to(),
                    "if units are set in the wrong order, two answer at once, and the software"
                        + " keeps polling the old address",
                    "set address: "
                        + moved.from()
                        + " again, or set the units in the order that the goal changes gives"))
            .about("from " + moved.from()));
  }
}
