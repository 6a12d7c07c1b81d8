package org.headhouse.linter.rules.network;

import java.util.HashMap;
import java.util.Map;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Network;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** {@code network.duplicate-ip}. */
public final class NetworkDuplicateIp implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of("network.duplicate-ip", "No two units share an IP address.", Level.ERROR)
          .yieldingTo("network.bad-address");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Map<Long, Unit> first = new HashMap<>();
    for (Unit unit : site.units()) {
      Network network = unit.network().orNull();
      String text = network == null ? null : network.ip().orNull();
      Ipv4 address = text == null ? null : Ipv4.parse(text);
      Unit other =
          address == null || (address.hasPrefix() && !address.isHost())
              ? null
              : first.putIfAbsent(address.address(), unit);
      Network taken = other == null ? null : other.network().orNull();
      if (network != null && other != null && taken != null) {
        context.report(
            context
                .finding(
                    network.ip().place(),
                    new Message(
                        "the IP address \"" + text + "\" is used twice",
                        "neither of the two units can be reached for certain",
                        "give " + unit.called() + " a free address of the same network"))
                .related(
                    taken.ip().place().region(), "it is first used here, by " + other.called()));
      }
    }
  }
}
