package org.headhouse.linter.rules.run;

import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Run;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.SurgeProtection;

/** {@code run.unprotected}: common practice, no source; the local electrical code decides. */
public final class RunUnprotected implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "run.unprotected",
          "A run between buildings has surge protection at both ends.",
          Level.WARNING);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (ChainItem item : site.items()) {
      boolean outside = item.runToNext().is(Run.BETWEEN_BUILDINGS);
      boolean open =
          item.surgeProtectionToNext().isMissing()
              || item.surgeProtectionToNext().is(SurgeProtection.NONE);
      if (outside && open) {
        context.report(
            context
                .finding(
                    item.surgeProtectionToNext().isMissing()
                        ? item.runToNext().place()
                        : item.surgeProtectionToNext().place(),
                    new Message(
                        "the run after "
                            + item.called()
                            + " leaves the building without surge protection",
                        "lightning nearby can destroy every unit on the line",
                        "have protection fitted at both ends as the local electrical code asks, and set"
                            + " surge-protection-to-next: fitted"))
                .fixedBy(fix(item)));
      }
    }
  }

  private static FixDraft fix(ChainItem item) {
    String fitted = SurgeProtection.FITTED.word();
    return FixDraft.proposed(
        "Have surge protection fitted at both ends of the run after " + item.called(),
        item.surgeProtectionToNext().isMissing()
            ? Edit.addKey(item.place(), "run-to-next", "surge-protection-to-next", fitted)
            : Edit.write(item.surgeProtectionToNext().place(), fitted));
  }
}
