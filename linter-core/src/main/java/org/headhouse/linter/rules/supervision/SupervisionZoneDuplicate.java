package org.headhouse.linter.rules.supervision;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.CustomerKey;
import org.headhouse.linter.rule.RepositoryRule;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.rules.name.Folded;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Supervision;

/** {@code supervision.zone-duplicate}: looks at one site, and at all sites of one customer. */
public final class SupervisionZoneDuplicate implements SiteRule, RepositoryRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "supervision.zone-duplicate",
              "No zone is listed twice, and no two sites of one customer have a zone of the same name.",
              Level.ERROR)
          .yieldingTo("site.duplicate-id");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Supervision supervision = site.supervision().orNull();
    if (supervision == null) {
      return;
    }
    Map<String, Setting<String>> first = new HashMap<>();
    for (Setting<String> zone : supervision.zones().or(List.of())) {
      String name = zone.orNull();
      Setting<String> other = name == null ? null : first.putIfAbsent(name, zone);
      if (name != null && other != null) {
        context.report(
            context
                .finding(
                    zone.place(),
                    new Message(
                        "the zone \"" + name + "\" is listed twice",
                        "the unit is polled twice and its alarms count double",
                        "delete one of the two"))
                .related(other.place().region(), "it is first listed here")
                .fixedBy(
                    FixDraft.proposed(
                        "Delete the second zone \"" + name + "\"",
                        new Edit.RemoveItem(zone.place()))));
      }
    }
  }

  /** The zones of a site whose customer is known. */
  @Override
  public List<Setting<String>> keys(Site site) {
    String customer = site.customer().orNull();
    Supervision supervision = site.supervision().orNull();
    if (customer == null || supervision == null) {
      return List.of();
    }
    List<Setting<String>> keys = new ArrayList<>();
    Set<String> folded = new HashSet<>();
    for (Setting<String> zone : supervision.zones().or(List.of())) {
      if (zone instanceof Setting.Given<String> given && folded.add(Folded.of(given.value()))) {
        keys.add(new Setting.Given<>(CustomerKey.of(customer, given.value()), given.place()));
      }
    }
    return keys;
  }

  /** Zones are names of units, which differ only if they do so without case and spaces. */
  @Override
  public String compared(String key) {
    String name = CustomerKey.text(key);
    return key.substring(0, key.length() - name.length()) + Folded.of(name);
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public Message clash(String key, String firstFile, String file) {
    return new Message(
        "the zone \""
            + CustomerKey.text(key)
            + "\" is also listed at another site of this customer",
        "if one list shows both sites, nobody can tell which site an alarm comes from",
        "rename the unit at one of the two sites, for example by adding the name of the site");
  }

  @Override
  public String firstUse(String key) {
    return "\"" + CustomerKey.text(key) + "\" is first listed here";
  }
}
