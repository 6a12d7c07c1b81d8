package org.headhouse.linter.rules.serial;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;

/** {@code serial.unsupported}. */
public final class SerialUnsupported implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "serial.unsupported",
          "Every type of device on the chain can be set to the baud rate of the line.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    LineSettings line = site.line().orNull();
    Integer baud = line == null ? null : line.baud().orNull();
    if (line == null || baud == null) {
      return;
    }
    Set<String> reported = new HashSet<>();
    for (ChainItem unit : site.items()) {
      List<Setting<Integer>> rates = unit.type().baudRates().orNull();
      if (rates != null && lack(rates, baud) && reported.add(unit.deviceType().or(""))) {
        report(unit, baud, rates, line, context);
      }
    }
  }

  private static boolean lack(List<Setting<Integer>> rates, Integer baud) {
    for (int i = 0; i < rates.size(); i++) {
      if (!rates.get(i).isGiven() || rates.get(i).is(baud)) {
        return false;
      }
    }
    return true;
  }

  private static void report(
      ChainItem unit,
      int baud,
      List<Setting<Integer>> rates,
      LineSettings line,
      RuleContext context) {
    String possible =
        rates.stream().map(rate -> String.valueOf(rate.or(0))).collect(Collectors.joining(", "));
    context.report(
        context
            .finding(
                line.baud().place(),
                new Message(
                    "the line runs at "
                        + baud
                        + " bit/s, and the type \""
                        + unit.deviceType().or("")
                        + "\" cannot be set to that",
                    "units at another rate hear nothing and disturb the line",
                    "choose a rate that all types have; this one has " + possible))
            .related(unit.deviceType().place().region(), unit.called() + " is of that type"));
  }
}
