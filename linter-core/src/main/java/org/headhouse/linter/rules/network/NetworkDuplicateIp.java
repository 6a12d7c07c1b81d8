package org.headhouse.linter.rules.network;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.CustomerKey;
import org.headhouse.linter.rule.RepositoryRule;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Network;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Sharers;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/** {@code network.duplicate-ip}: looks at one site, and at all sites of one customer. */
public final class NetworkDuplicateIp implements SiteRule, RepositoryRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "network.duplicate-ip",
              "No two units of one customer share an IP address.",
              Level.ERROR)
          .yieldingTo("network.bad-address", "site.duplicate-id");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Sharers<Long> sharers = new Sharers<>();
    for (Unit unit : site.units()) {
      Network network = unit.network().orNull();
      Ipv4 address = network == null ? null : address(network);
      List<ChainItem> others =
          address == null ? List.of() : sharers.before(address.address(), unit);
      Unit other = others.isEmpty() ? null : (Unit) others.get(0);
      Network taken = other == null ? null : other.network().orNull();
      if (network != null && other != null && taken != null) {
        context.report(
            context
                .finding(
                    network.ip().place(),
                    new Message(
                        "the IP address \"" + network.ip().or("") + "\" is used twice",
                        "neither unit can be reached reliably",
                        "give " + unit.called() + " a free address of the same network"))
                .aboutOthers(ChainItem.names(others))
                .related(
                    taken.ip().place().region(), "it is first used here, by " + other.called()));
      }
    }
  }

  /** The address of a unit, or null where it has none that a unit can have. */
  private static @Nullable Ipv4 address(Network network) {
    String text = network.ip().orNull();
    Ipv4 address = text == null ? null : Ipv4.parse(text);
    return address == null || (address.hasPrefix() && !address.isHost()) ? null : address;
  }

  /**
   * The addresses of a site whose customer is known. Those of two customers are in two networks:
   * private addresses (RFC 1918) are the same everywhere.
   */
  @Override
  public List<Setting<String>> keys(Site site) {
    String customer = site.customer().orNull();
    if (customer == null) {
      return List.of();
    }
    List<Setting<String>> keys = new ArrayList<>();
    for (Unit unit : site.units()) {
      Network network = unit.network().orNull();
      if (network != null && address(network) != null) {
        String address = network.ip().or("").split("/", 2)[0];
        keys.add(new Setting.Given<>(CustomerKey.of(customer, address), network.ip().place()));
      }
    }
    return keys;
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public Message clash(String key, String firstFile, String file) {
    return new Message(
        "the IP address "
            + CustomerKey.text(key)
            + " is also used at another site of this customer",
        "if one network joins the two sites, neither unit can be reached reliably",
        "give one of the two a free address; if the networks are separate, add a suppression"
            + " that says so");
  }

  @Override
  public String firstUse(String key) {
    return CustomerKey.text(key) + " is first used here";
  }
}
