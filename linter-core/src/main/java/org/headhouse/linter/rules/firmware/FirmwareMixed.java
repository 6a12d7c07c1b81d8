package org.headhouse.linter.rules.firmware;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/** {@code firmware.mixed}: common practice, no source. */
public final class FirmwareMixed implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of("firmware.mixed", "Units of one type have the same firmware.", Level.NOTE);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Map<String, Unit> first = new HashMap<>();
    Map<String, List<Unit>> others = new LinkedHashMap<>();
    for (Unit unit : site.units()) {
      String type = unit.deviceType().orNull();
      String firmware = unit.firmware().orNull();
      if (type == null || firmware == null) {
        continue;
      }
      Unit other = first.putIfAbsent(type, unit);
      if (other != null && !other.firmware().is(firmware)) {
        others.computeIfAbsent(type + " " + firmware, any -> new ArrayList<>()).add(unit);
      }
    }
    for (List<Unit> units : others.values()) {
      report(units, first.get(units.get(0).deviceType().or("")), context);
    }
  }

  private static void report(List<Unit> units, @Nullable Unit other, RuleContext context) {
    Unit unit = units.get(0);
    if (other == null) {
      return;
    }
    context.report(
        context
            .finding(
                unit.firmware().place(),
                new Message(
                    unit.called()
                        + (units.size() == 1
                            ? " has"
                            : " and "
                                + (units.size() - 1)
                                + (units.size() == 2 ? " other have" : " others have"))
                        + " firmware "
                        + unit.firmware().or("")
                        + ", but "
                        + other.called()
                        + " of the same type has "
                        + other.firmware().or(""),
                    "units of one type with different firmware may behave differently",
                    "update them to one version on the next visit"))
            .about(
                units.stream()
                    .map(one -> new Finding.Case(one.name().orNull(), one.firmware().or("")))
                    .toList())
            .related(other.firmware().place().region(), "the other version is here"));
  }
}
