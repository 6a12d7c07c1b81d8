package org.headhouse.linter.rules.network;

import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Network;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/** {@code network.outside-subnet}. */
public final class OutsideSubnet implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "network.outside-subnet",
          "All units and their gateways lie in one network.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Ipv4 common = null;
    Unit first = null;
    for (Unit unit : site.units()) {
      Network network = unit.network().orNull();
      Ipv4 address = network == null ? null : parse(network.ip());
      if (network == null || address == null || !address.hasPrefix()) {
        continue; // told as a bad address
      }
      Ipv4 gateway = parse(network.gateway());
      if (common == null || first == null) {
        common = address;
        first = unit;
      } else if (!common.contains(address)) {
        context.report(
            context
                .finding(
                    network.ip().place(), message(unit.called(), network.ip(), "the other units"))
                .related(first.place().region(), first.called() + " sets the network"));
        continue;
      }
      if (gateway != null && !address.contains(gateway)) {
        context.report(
            network.gateway().place(),
            message("the gateway of " + unit.called(), network.gateway(), "the unit"));
      }
    }
  }

  private static @Nullable Ipv4 parse(Setting<String> setting) {
    String text = setting.orNull();
    return text == null ? null : Ipv4.parse(text);
  }

  private static Message message(String what, Setting<String> setting, String whose) {
    return new Message(
        what + " has \"" + setting.or("") + "\", outside the network of " + whose,
        "messages do not find their way",
        "write an address of the same network");
  }
}
