package org.headhouse.linter.rules.termination;

import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Segment;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Termination;

/** {@code termination.mid-line}: MODBUS over Serial Line V1.02 §3.4.5. */
public final class TerminationMidLine implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "termination.mid-line",
          "No item between the ends of a segment has a terminator.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (Segment segment : site.segments()) {
      for (ChainItem item : segment.items()) {
        boolean isEnd = segment.endsAt(item);
        Setting<Termination> setting = segment.termination(item);
        Termination termination = setting.orNull();
        if (!isEnd && termination != null && termination.isFitted()) {
          context.report(
              context
                  .finding(
                      setting.place(),
                      new Message(
                          item.called()
                              + " has a "
                              + termination.written()
                              + " terminator but is not at an end of its segment",
                          "an extra terminator overloads the drivers",
                          "isolate the supply, remove it, and set termination: none"))
                  .fixedBy(
                      FixDraft.onSite(
                          "Remove the terminator of " + item.called(),
                          Edit.write(setting.place(), "none"))));
        }
      }
    }
  }
}
