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
import org.headhouse.linter.rules.bias.WeakBias;
import org.headhouse.linter.rules.commissioning.MeasuredOff;
import org.headhouse.linter.rules.signal.WeakSignal;
import org.headhouse.linter.rules.traffic.BusyLine;
import org.headhouse.linter.site.ExcludedAddresses;

/** What a policy says of sheets: they show the limits that the rules check. */
final class SheetPolicy {
  private SheetPolicy() {}

  static SheetSettings settings(
      Measure measure,
      Paper paper,
      LocalDate today,
      Policy policy,
      ExcludedAddresses keptFree,
      List<RuleDescriptor> rules) {
    return new SheetSettings(
        measure,
        paper,
        today,
        policy.ruleSet(),
        rules.stream().collect(Collectors.toMap(RuleDescriptor::id, RuleDescriptor::summary)),
        MeasuredOff.tolerance(one -> policy.value(MeasuredOff.DESCRIPTOR, one)),
        BusyLine.most(one -> policy.value(BusyLine.DESCRIPTOR, one)),
        keptFree);
  }

  static Margins margins(Policy policy) {
    double idle = WeakBias.wantedVolts(one -> policy.value(WeakBias.DESCRIPTOR, one));
    double signal = WeakSignal.wantedVolts(one -> policy.value(WeakSignal.DESCRIPTOR, one));
    return new Margins(
        idle - Levels.RECEIVER_THRESHOLD_VOLTS, signal - Levels.RECEIVER_THRESHOLD_VOLTS);
  }
}
