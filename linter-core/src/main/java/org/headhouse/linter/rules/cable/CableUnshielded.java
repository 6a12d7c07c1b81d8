package org.headhouse.linter.rules.cable;

import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Cable;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Site;

/** {@code cable.unshielded}: MODBUS over Serial Line V1.02 §3.6. */
public final class CableUnshielded implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of("cable.unshielded", "The cable is shielded.", Level.WARNING);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    LineSettings line = site.line().orNull();
    Cable cable = line == null ? null : line.cable().orNull();
    if (cable != null && cable.shielded().is(false)) {
      context.report(
          context
              .finding(
                  cable.shielded().place(),
                  new Message(
                      "the cable is not shielded",
                      "motors and lamps in a greenhouse disturb an unshielded pair",
                      "use a shielded cable, and ground its shield at one end"))
              .fixedBy(
                  FixDraft.proposed(
                      "Use a shielded cable", Edit.plain(cable.shielded().place(), true))));
    }
  }
}
