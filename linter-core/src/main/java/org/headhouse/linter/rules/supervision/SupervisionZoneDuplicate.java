package org.headhouse.linter.rules.supervision;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Supervision;

/** {@code supervision.zone-duplicate}. */
public final class SupervisionZoneDuplicate implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of("supervision.zone-duplicate", "No zone is listed twice.", Level.ERROR);

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
                    FixDraft.inFile(
                        "Delete the second zone \"" + name + "\"",
                        new Edit.RemoveItem(zone.place()))));
      }
    }
  }
}
