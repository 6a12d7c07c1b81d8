package org.headhouse.linter.rules.module;

import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.CommModule;
import org.headhouse.linter.site.ModuleNeed;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** {@code module.absent}: common practice, no source. */
public final class ModuleAbsent implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "module.absent",
          "Every unit has a communication module, fitted or built in.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (Unit unit : site.units()) {
      boolean wrongly =
          unit.commModule().is(CommModule.BUILT_IN)
              && unit.type().commModule().is(ModuleNeed.NEEDED);
      if (unit.commModule().is(CommModule.ABSENT) || wrongly) {
        context.report(
            context
                .finding(unit.commModule().place(), message(unit, wrongly))
                .fixedBy(
                    FixDraft.proposed(
                        "Fit a communication module at " + unit.called(),
                        Edit.write(unit.commModule().place(), CommModule.FITTED.word()))));
      }
    }
  }

  private static Message message(Unit unit, boolean wrongly) {
    if (wrongly) {
      return new Message(
          unit.called() + " counts on a built-in communication module that its type does not have",
          "the unit cannot reach the line",
          "fit a module and set comm-module: fitted");
    }
    return new Message(
        unit.called() + " has no communication module",
        "the unit cannot send or receive on the line",
        "isolate the supply, fit a module, and set comm-module: fitted");
  }
}
