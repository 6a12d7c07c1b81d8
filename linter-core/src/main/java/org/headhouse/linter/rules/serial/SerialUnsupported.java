package org.headhouse.linter.rules.serial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.DeviceType;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;

/** {@code serial.unsupported}. */
public final class SerialUnsupported implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "serial.unsupported",
          "Every device type on the chain can be set to the baud rate and the parity of the line.",
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
    Map<String, List<ChainItem>> byType = new LinkedHashMap<>();
    for (ChainItem item : site.items()) {
      if (item.type().isKnown()) {
        byType.computeIfAbsent(item.deviceType().or(""), any -> new ArrayList<>()).add(item);
      }
    }
    byType.values().forEach(items -> check(items, line, context));
  }

  /** One result for all items of a type. */
  private static void check(List<ChainItem> items, LineSettings line, RuleContext context) {
    DeviceType type = items.get(0).type();
    Integer baud = line.baud().orNull();
    List<Setting<Integer>> rates = type.baudRates().orNull();
    if (baud != null && rates != null && lack(rates, baud)) {
      String able = words(rates, String::valueOf);
      report(items, line.baud(), "runs at " + baud + " bit/s", "rate", able, context);
    }
    Parity parity = line.parity().orNull();
    List<Setting<Parity>> parities = type.serialPort().parities().orNull();
    if (parity != null && parities != null && lack(parities, parity)) {
      String able = words(parities, Parity::word);
      report(items, line.parity(), "has parity " + parity.word(), "parity", able, context);
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
      List<ChainItem> items,
      Setting<?> setting,
      String fact,
      String what,
      String possible,
      RuleContext context) {
    ChainItem item = items.get(0);
    List<Finding.Case> cases =
        items.stream().map(one -> new Finding.Case(one.name().orNull(), what)).toList();
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
                    "units at another " + what + " understand nothing and disturb the line",
                    "set all units and the line to a "
                        + what
                        + " that every type has; this one has "
                        + possible))
            .about(cases)
            .related(item.deviceType().place().region(), item.called() + " is of that type"));
  }
}
