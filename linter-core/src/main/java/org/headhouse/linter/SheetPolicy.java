package org.headhouse.linter;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.headhouse.linter.diagram.Margins;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.line.Levels;
import org.headhouse.linter.policy.Policy;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.report.sheet.SheetSettings;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rules.bias.BiasWeak;
import org.headhouse.linter.rules.commissioning.CommissioningMeasuredOff;
import org.headhouse.linter.rules.signal.SignalWeak;
import org.headhouse.linter.rules.traffic.TrafficBusy;
import org.headhouse.linter.site.KeptFree;

/** What a policy says of sheets: they show the limits that the rules check. */
final class SheetPolicy {
  private SheetPolicy() {}

  static SheetSettings settings(
      Measure measure,
      Paper paper,
      LocalDate today,
      Policy policy,
      KeptFree keptFree,
      List<RuleDescriptor> rules) {
    return new SheetSettings(
        measure,
        paper,
        today,
        policy.ruleSet(),
        rules.stream().collect(Collectors.toMap(RuleDescriptor::id, RuleDescriptor::requirement)),
        CommissioningMeasuredOff.tolerance(
            one -> policy.value(CommissioningMeasuredOff.DESCRIPTOR, one)),
        TrafficBusy.most(one -> policy.value(TrafficBusy.DESCRIPTOR, one)),
        keptFree);
  }

  static Margins margins(Policy policy) {
    double idle = BiasWeak.wantedVolts(one -> policy.value(BiasWeak.DESCRIPTOR, one));
    double signal = SignalWeak.wantedVolts(one -> policy.value(SignalWeak.DESCRIPTOR, one));
    return new Margins(
        idle - Levels.RECEIVER_THRESHOLD_VOLTS, signal - Levels.RECEIVER_THRESHOLD_VOLTS);
  }
}
