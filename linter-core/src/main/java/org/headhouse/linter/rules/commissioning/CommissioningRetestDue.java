package org.headhouse.linter.rules.commissioning;

import java.time.LocalDate;
import java.time.Period;
import org.headhouse.linter.proof.WholeLineProof;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.ParameterType;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;

/** {@code commissioning.retest-due}: silent until the policy says how often. */
public final class CommissioningRetestDue implements SiteRule {
  /** How often the whole line is proved again; zero where the policy does not say. */
  public static final Parameter<Period> EVERY =
      new Parameter<>(
          "every", "how often the whole line is proved again", ParameterType.period(), "never");

  public static final RuleDescriptor DESCRIPTOR =
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
    ProvingRecord whole = WholeLineProof.record(site, commissioning);
    LocalDate day = whole.dayOrNull();
    if (day != null && day.plus(every).isBefore(context.today())) {
      context.report(
          whole.day().place(),
          new Message(
              "the whole line was last proved on "
                  + day
                  + ", and was due again on "
                  + day.plus(every),
              "joints corrode, and terminators and sensors fail; the files do not show it",
              "prove the whole line again: measure it, and watch the readings and responses at"
                  + " every unit; then enter the new record"));
    }
  }
}
