package org.headhouse.linter.rules.serial;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;

/** {@code serial.unsupported}. */
public final class SerialUnsupported implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "serial.unsupported",
          "Every type of device on the chain can be set to the baud rate and the parity of the line.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    LineSettings line = site.line().orNull();
    if (line == null) {
      return;
    }
    Integer baud = line.baud().orNull();
    Parity parity = line.parity().orNull();
    Set<String> reported = new HashSet<>();
    for (ChainItem item : site.items()) {
      if (reported.contains(item.deviceType().or(""))) {
        continue;
      }
      List<Setting<Integer>> rates = item.type().baudRates().orNull();
      if (baud != null && rates != null && lack(rates, baud)) {
        String able = words(rates, String::valueOf);
        report(item, line.baud(), "runs at " + baud + " bit/s", "rate", able, context);
        reported.add(item.deviceType().or(""));
      }
      List<Setting<Parity>> parities = item.type().serialPort().parities().orNull();
      if (parity != null && parities != null && lack(parities, parity)) {
        String able = words(parities, Parity::word);
        report(item, line.parity(), "has parity " + parity.word(), "parity", able, context);
        reported.add(item.deviceType().or(""));
      }
    }
  }

  private static <T> boolean lack(List<Setting<T>> able, T wanted) {
    for (int i = 0; i < able.size(); i++) {
      if (!able.get(i).isGiven() || able.get(i).is(wanted)) {
        return false;
      }
    }
    return true;
  }

  private static <T> String words(List<Setting<T>> able, Function<T, String> word) {
    return able.stream()
        .flatMap(one -> one.optional().stream())
        .map(word)
        .collect(Collectors.joining(", "));
  }

  private static void report(
      ChainItem item,
      Setting<?> setting,
      String fact,
      String what,
      String possible,
      RuleContext context) {
    context.report(
        context
            .finding(
                setting.place(),
                new Message(
                    "the line "
                        + fact
                        + ", and the type \""
                        + item.deviceType().or("")
                        + "\" cannot be set to that",
                    "units at another " + what + " hear nothing and disturb the line",
                    "choose a " + what + " that all types have; this one has " + possible))
            .related(item.deviceType().place().region(), item.called() + " is of that type"));
  }
}
