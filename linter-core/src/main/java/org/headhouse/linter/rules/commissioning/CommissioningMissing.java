package org.headhouse.linter.rules.commissioning;

import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;

/** {@code commissioning.missing}. */
public final class CommissioningMissing implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "commissioning.missing",
          "A commissioned site has its commissioning record.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    if (site.stage().is(Stage.COMMISSIONED) && site.commissioning().isMissing()) {
      context.report(
          site.stage().place(),
          new Message(
              "the site is commissioned but has no commissioning record",
              "nobody can tell later whether the line was ever proved",
              "prove the line, and then complete the record at the end of its sheet and paste it in; until"
                  + " then set stage: planned"));
    }
  }
}
