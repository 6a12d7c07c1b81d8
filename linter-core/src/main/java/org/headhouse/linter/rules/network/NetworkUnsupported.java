package org.headhouse.linter.rules.network;

import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Network;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** {@code network.unsupported}. */
public final class NetworkUnsupported implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "network.unsupported",
          "A unit with network settings is of a type with Ethernet.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (Unit unit : site.units()) {
      boolean lacks =
          unit.type().isKnown()
              && !unit.type().ethernet().or(false)
              && !unit.type().ethernet().isFaulty();
      Network network = unit.network().orNull();
      if (network != null && lacks) {
        context.report(
            network.place(),
            new Message(
                unit.called()
                    + " has network settings, but its type \""
                    + unit.deviceType().or("")
                    + "\" has no Ethernet",
                "the unit cannot be reached over Ethernet",
                "delete network, or correct the type"));
      }
    }
  }
}
