package org.headhouse.linter.rules.traffic;

import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.figures.TrafficFit;
import org.headhouse.linter.figures.TransactionTimes;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.ParameterType;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Site;

/**
 * {@code traffic.busy}: common practice, no source; the times are those of MODBUS over Serial Line
 * V1.02.
 */
public final class TrafficBusy implements SiteRule {
  /** Makes {@link SitePolicy#mostUtilisation}. */
  public static final Parameter<Double> MOST =
      new Parameter<>(
          "most",
          "the share of the time that the line may be in use",
          ParameterType.percent("1 %", "100 %"),
          "70 %");

  /** Makes {@link TransactionTimes#turnaroundSeconds}. */
  public static final Parameter<Interval> TURNAROUND =
      new Parameter<>(
          "turnaround",
          "the pause after a broadcast; used wherever the traffic is computed",
          ParameterType.within(ParameterType.interval(), Interval::seconds, "1 ms", "10 s"),
          "100 ms");

  /** Makes {@link TransactionTimes#usualProcessingSeconds}. */
  public static final Parameter<Interval> PROCESSING =
      new Parameter<>(
          "processing",
          "the time from a request to the answer of a unit whose type gives none; used wherever"
              + " the traffic is computed",
          ParameterType.within(ParameterType.interval(), Interval::seconds, "1 ms", "10 s"),
          "20 ms");

  /** What is known of the rule. */
  public static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "traffic.busy",
              "The line is in use at most 70 % of the time.",
              Level.WARNING,
              MOST,
              TURNAROUND,
              PROCESSING)
          .yieldingTo("traffic.overrun");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Traffic traffic = context.figures().traffic();
    double most = context.sitePolicy().mostUtilisation();
    if (traffic != null
        && traffic.utilisation() > most
        && traffic.utilisation() <= TrafficOverrun.ALL_OF_THE_TIME) {
      TrafficFit fit = TrafficFit.within(most, traffic, site);
      context.report(
          context
              .finding(
                  fit.place(),
                  new Message(
                      "the line is in use "
                          + Shown.percentBeside(most, traffic.utilisation())
                          + " of the time; at most "
                          + Shown.percent(most)
                          + " is allowed",
                      "after one lost message there is no time to catch up, and readings come late",
                      fit.remedy()))
              .fixedBy(TrafficFix.fix(fit, site)));
    }
  }
}
