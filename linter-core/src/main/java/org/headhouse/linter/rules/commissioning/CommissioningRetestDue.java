package org.headhouse.linter.rules.commissioning;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.proof.GivenProofs;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.proof.RequiredProofs;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.ParameterType;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;

/** {@code commissioning.retest-due}: silent until the policy says how often. */
public final class CommissioningRetestDue implements SiteRule {
  private static final Parameter<Period> EVERY =
      new Parameter<>(
          "every", "how often the whole line is proved again", ParameterType.period(), "never");

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "commissioning.retest-due",
          "The whole line was proved within the period of the policy.",
          Level.WARNING,
          EVERY);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Period every = context.value(EVERY);
    Commissioning commissioning = site.commissioning().orNull();
    if (every.isZero() || commissioning == null || !site.stage().is(Stage.COMMISSIONED)) {
      return;
    }
    ProvingRecord whole = latestOfWholeLine(site, commissioning);
    LocalDate day = whole.dayOrNull();
    if (day != null && day.plus(every).isBefore(context.today())) {
      context.report(
          whole.day().place(),
          new Message(
              "the whole line was last proved on "
                  + day
                  + ", and was due again on "
                  + day.plus(every),
              "joints corrode, terminators and sensors fail, and nobody sees it from the files",
              "measure the line and see readings and responses at every unit again, and then enter"
                  + " that day with what was measured and seen"));
    }
  }

  /** A renewal that proves all that a record has to prove renews all of it; a part does not. */
  private static ProvingRecord latestOfWholeLine(Site site, Commissioning commissioning) {
    Set<Proof> required = RequiredProofs.of(site);
    ProvingRecord latest = commissioning.first();
    for (Setting<ProvingRecord> one : commissioning.renewed().or(List.of())) {
      ProvingRecord renewal = one.orNull();
      if (renewal != null
          && renewal.dayOrNull() != null
          && GivenProofs.of(site, List.of(renewal)).containsAll(required)) {
        latest = renewal;
      }
    }
    return latest;
  }
}
