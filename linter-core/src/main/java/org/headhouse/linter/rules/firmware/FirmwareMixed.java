package org.headhouse.linter.rules.firmware;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

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
    Set<String> reported = new HashSet<>();
    for (Unit unit : site.units()) {
      String type = unit.deviceType().orNull();
      String firmware = unit.firmware().orNull();
      if (type == null || firmware == null) {
        continue;
      }
      Unit other = first.putIfAbsent(type, unit);
      if (other != null && !other.firmware().is(firmware) && reported.add(type + " " + firmware)) {
        context.report(
            context
                .finding(
                    unit.firmware().place(),
                    new Message(
                        unit.called()
                            + " has firmware "
                            + firmware
                            + ", "
                            + other.called()
                            + " of the same type "
                            + other.firmware().or(""),
                        "units of one type that behave differently are hard to service",
                        "bring them to one version when the site is next visited"))
                .related(other.firmware().place().region(), "the other version is here"));
      }
    }
  }
}
