package org.headhouse.linter.rules.network;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
public final class NetworkOutsideSubnet implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "network.outside-subnet",
              "All units and their gateways are in one network.",
              Level.ERROR)
          .yieldingTo("network.bad-address");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Unit example = exampleOfCommonest(site.units());
    Ipv4 common = example == null ? null : address(example);
    for (Unit unit : site.units()) {
      Network network = unit.network().orNull();
      Ipv4 address = address(unit);
      if (example == null || common == null || network == null || address == null) {
        continue;
      }
      Ipv4 gateway = parse(network.gateway());
      if (!isSameNetwork(common, address)) {
        context.report(
            context
                .finding(
                    network.ip().place(),
                    message(
                        unit.called(),
                        network.ip(),
                        "the other units",
                        "the network of the other units cannot reach it"))
                .related(example.place().region(), example.called() + " is in that network"));
      } else if (gateway != null && !gateway.hasPrefix() && !address.contains(gateway)) {
        context.report(
            network.gateway().place(),
            message(
                "the gateway of " + unit.called(),
                network.gateway(),
                "the unit",
                "the unit cannot reach a gateway outside its subnet"));
      }
    }
  }

  private static boolean isSameNetwork(Ipv4 one, Ipv4 other) {
    return one.prefix() == other.prefix() && one.contains(other);
  }

  /** The first unit in the network that most units are in; of equal ones the first network. */
  private static @Nullable Unit exampleOfCommonest(List<Unit> units) {
    Map<Ipv4, Integer> sizes = new HashMap<>();
    for (Unit unit : units) {
      Ipv4 address = address(unit);
      if (address != null) {
        sizes.merge(new Ipv4(address.network(), address.prefix()), 1, Integer::sum);
      }
    }
    Unit example = null;
    int most = 0;
    for (Unit unit : units) {
      Ipv4 address = address(unit);
      int size =
          address == null
              ? 0
              : sizes.getOrDefault(new Ipv4(address.network(), address.prefix()), 0);
      if (size > most) {
        example = unit;
        most = size;
      }
    }
    return example;
  }

  /** The address of a unit, or null for one that {@code network.bad-address} reports. */
  private static @Nullable Ipv4 address(Unit unit) {
    Network network = unit.network().orNull();
    Ipv4 address = network == null ? null : parse(network.ip());
    return address != null && address.hasPrefix() && address.isHost() ? address : null;
  }

  private static @Nullable Ipv4 parse(Setting<String> setting) {
    String text = setting.orNull();
    return text == null ? null : Ipv4.parse(text);
  }

  private static Message message(
      String what, Setting<String> setting, String whose, String reason) {
    return new Message(
        what + ", \"" + setting.or("") + "\", is outside the subnet of " + whose,
        reason,
        "set an address in that subnet");
  }
}
