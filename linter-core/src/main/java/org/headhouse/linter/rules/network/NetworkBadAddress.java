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

/** {@code network.bad-address}. */
public final class NetworkBadAddress implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "network.bad-address",
          "An IP address is one that a device can have, and includes its prefix length.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (Unit unit : site.units()) {
      Network network = unit.network().orNull();
      if (network != null) {
        Ipv4 own = checkIp(network.ip(), context);
        checkGateway(network.gateway(), own, context);
      }
    }
  }

  /** The address, where it is good. */
  private static @Nullable Ipv4 checkIp(Setting<String> setting, RuleContext context) {
    String text = setting.orNull();
    Ipv4 address = text == null ? null : Ipv4.parse(text);
    if (text == null || (address != null && address.hasPrefix() && address.isHost())) {
      return address;
    }
    if (address != null && address.hasPrefix()) {
      report(
          setting,
          "\"" + text + "\" is the network's own address or its broadcast",
          "set an address that a device of that network can have",
          context);
    } else {
      report(
          setting,
          "\"" + text + "\" is not an address with a prefix length",
          "write for example " + (address == null ? "192.168.40.12" : text) + "/24",
          context);
    }
    return null;
  }

  private static void checkGateway(
      Setting<String> setting, @Nullable Ipv4 own, RuleContext context) {
    String text = setting.orNull();
    Ipv4 gateway = text == null ? null : Ipv4.parse(text);
    if (text == null) {
      return;
    }
    if (gateway == null || gateway.hasPrefix()) {
      report(
          setting,
          "\"" + text + "\" is not a gateway address",
          "write the address alone, such as 192.168.40.1",
          context);
    } else if (own != null && own.contains(gateway) && !isGatewayOf(own, gateway)) {
      report(
          setting,
          "\"" + text + "\" cannot be the gateway of this network",
          "write the address of the router; it is neither the unit's own nor the broadcast",
          context);
    }
  }

  private static boolean isGatewayOf(Ipv4 own, Ipv4 gateway) {
    return gateway.address() != own.address() && gateway.inNetworkOf(own).isHost();
  }

  private static void report(
      Setting<String> setting, String fact, String remedy, RuleContext context) {
    context.report(
        setting.place(), new Message(fact, "the unit cannot be reached over Ethernet", remedy));
  }
}
