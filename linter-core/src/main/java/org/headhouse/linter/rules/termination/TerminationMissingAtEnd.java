package org.headhouse.linter.rules.termination;

import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.rules.segment.EdgeWords;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Segment;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Termination;

/** {@code termination.missing-at-end}: MODBUS over Serial Line V1.02 §3.4.5. */
public final class TerminationMissingAtEnd implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "termination.missing-at-end",
              "Both ends of a segment have a terminator.",
              Level.ERROR)
          .yieldingTo("termination.undeclared");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (SegmentLine line : context.figures().segments()) {
      Segment segment = line.segment();
      check(line, segment.first(), site, context);
      if (segment.items().size() > 1) {
        check(line, segment.last(), site, context);
      }
    }
  }

  private static String impedance(Site site) {
    return site.line()
        .optional()
        .flatMap(line -> line.cable().optional())
        .flatMap(cable -> cable.impedance().optional())
        .map(Resistance::written)
        .orElse("120 ohm");
  }

  private static void check(SegmentLine line, ChainItem end, Site site, RuleContext context) {
    Setting<Termination> setting = line.segment().termination(end);
    Termination termination = setting.orNull();
    if (termination != null && !termination.isFitted()) {
      String value = impedance(site);
      context.report(
          context
              .finding(
                  setting.place(),
                  new Message(
                      end.called() + " ends the segment without a terminator",
                      "the signal is reflected from the open end, and errors come and go"
                          + EdgeWords.of(line),
                      "isolate the supply, fit " + value + ", and record it"))
              .fixedBy(
                  FixDraft.proposed(
                      "Fit a terminator of " + value + " at " + end.called(),
                      Edit.write(setting.place(), value))));
    }
  }
}
