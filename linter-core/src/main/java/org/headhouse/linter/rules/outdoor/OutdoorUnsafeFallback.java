package org.headhouse.linter.rules.outdoor;

import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.StaleAction;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.Vents;

/** {@code outdoor.unsafe-fallback}: common practice, no source. */
public final class OutdoorUnsafeFallback implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "outdoor.unsafe-fallback",
          "A unit with vents closes them once its outdoor readings are too old.",
          Level.WARNING);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (Unit unit : site.units()) {
      Vents vents = unit.vents().orNull();
      boolean closes = unit.onStaleReadings().optional().filter(StaleAction::closes).isPresent();
      if (vents != null && vents != Vents.NONE && !closes && !unit.onStaleReadings().isFaulty()) {
        context.report(
            context
                .finding(
                    unit.onStaleReadings().isMissing()
                        ? unit.vents().place()
                        : unit.onStaleReadings().place(),
                    message(unit, vents))
                .fixedBy(closing(unit)));
      }
    }
  }

  private static FixDraft closing(Unit unit) {
    String close = StaleAction.CLOSE.word();
    return FixDraft.onSite(
        "Set " + unit.called() + " to close its vents on stale readings",
        unit.onStaleReadings().isMissing()
            ? Edit.addKey(unit.place(), "vents", "on-stale-readings", close)
            : Edit.write(unit.onStaleReadings().place(), close));
  }

  private static Message message(Unit unit, Vents vents) {
    StaleAction action = unit.onStaleReadings().orNull();
    return new Message(
        unit.called()
            + " moves "
            + vents.word()
            + " vents but "
            + (action == null
                ? "the file does not say what it does when readings stop"
                : "is set to " + action.word() + " when readings stop"),
        "vents left open in a storm are wrecked and can injure people",
        "set the unit and the file to on-stale-readings: close, or close-and-alarm; ask first"
            + " whether the house stays safe with its vents shut");
  }
}
