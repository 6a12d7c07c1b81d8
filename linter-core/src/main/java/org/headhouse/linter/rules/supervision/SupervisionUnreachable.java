package org.headhouse.linter.rules.supervision;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Link;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Supervision;
import org.headhouse.linter.site.Unit;

/** {@code supervision.unreachable}. */
public final class SupervisionUnreachable implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "supervision.unreachable",
          "Over Ethernet, every unit that is a zone has network settings.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Supervision supervision = site.supervision().orNull();
    if (supervision == null || !supervision.link().is(Link.ETHERNET)) {
      return;
    }
    Set<String> reported = new HashSet<>();
    for (Setting<String> zone : supervision.zones().or(List.of())) {
      Unit unit = site.unit(zone.orNull());
      if (unit != null && unit.network().isMissing() && reported.add(zone.or(""))) {
        context.report(
            context
                .finding(
                    zone.place(),
                    new Message(
                        unit.called() + " is polled over Ethernet but has no network settings",
                        "the software cannot reach it",
                        "add network with its ip to "
                            + unit.called()
                            + ", or poll through the head unit or over the serial line"))
                .concerning(zone.or(""))
                .related(unit.name().place().region(), unit.called() + " is on the chain here"));
      }
    }
  }
}
