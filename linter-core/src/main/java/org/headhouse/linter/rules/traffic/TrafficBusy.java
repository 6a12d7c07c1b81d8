package org.headhouse.linter.rules.traffic;

import java.util.function.Function;
import org.headhouse.linter.figures.Shown;
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
  /** What a line that is mended should keep to, so that the next check does not find it busy. */
  static final double USUAL_MOST = 0.7;

  static final Parameter<Double> MOST =
      new Parameter<>(
          "most",
          "the share of the time that the line may be in use",
          ParameterType.percent(),
          "70 %");

  private static final Parameter<Interval> TURNAROUND =
      new Parameter<>(
          "turnaround",
          "the pause after a broadcast, here and wherever the traffic is computed",
          ParameterType.interval(),
          "100 ms");

  private static final Parameter<Interval> PROCESSING =
      new Parameter<>(
          "processing",
          "what a unit takes from a request to its answer, here and wherever the traffic is"
              + " computed",
          ParameterType.interval(),
          "20 ms");

  /** What is known of the rule. */
  public static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "traffic.busy",
          "The line is in use at most 70 % of the time.",
          Level.WARNING,
          MOST,
          TURNAROUND,
          PROCESSING);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  /**
   * The times that the traffic is computed with.
   *
   * @param values gives the value of a parameter of this rule
   */
  public static TransactionTimes times(Function<Parameter<Interval>, Interval> values) {
    return new TransactionTimes(
        values.apply(TURNAROUND).seconds(), values.apply(PROCESSING).seconds());
  }

  /**
   * The share of the time that the line may be in use.
   *
   * @param values gives the value of a parameter of this rule
   */
  public static double most(Function<Parameter<Double>, Double> values) {
    return values.apply(MOST);
  }

  @Override
  public void check(Site site, RuleContext context) {
    Traffic traffic = context.figures().traffic();
    double most = context.value(MOST);
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
                          + Shown.percent(traffic.utilisation())
                          + " of the time, over the "
                          + Shown.percent(most)
                          + " of common practice",
                      "after one lost message there is no time to catch up, and readings come late",
                      fit.remedy()))
              .fixedBy(Fitting.fix(fit, site)));
    }
  }
}
