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

/** {@code network.bad-address}. */
public final class BadAddress implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "network.bad-address",
          "An IP address is one that a device can have, with the length of its prefix.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (Unit unit : site.units()) {
      Network network = unit.network().orNull();
      if (network == null) {
        continue;
      }
      check(network.ip(), true, context);
      check(network.gateway(), false, context);
    }
  }

  private static void check(Setting<String> setting, boolean withPrefix, RuleContext context) {
    String text = setting.orNull();
    if (text == null) {
      return;
    }
    Ipv4 address = Ipv4.parse(text);
    boolean slash = text.indexOf('/') >= 0;
    boolean good = address != null && slash == withPrefix && (!withPrefix || address.isHost());
    if (!good) {
      context.report(
          setting.place(),
          new Message(
              "\"" + text + "\" is no address that a device can have",
              "the unit cannot be reached over Ethernet",
              withPrefix
                  ? "write the address with the length of its prefix, such as "
                      + (address != null && !slash ? text : "192.168.40.12")
                      + "/24"
                  : "write the address alone, such as 192.168.40.1"));
    }
  }
}
