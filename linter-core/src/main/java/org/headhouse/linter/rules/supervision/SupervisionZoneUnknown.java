package org.headhouse.linter.rules.supervision;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.rules.name.NameUnreadable;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Supervision;
import org.headhouse.linter.source.SpellingSuggester;

/** {@code supervision.zone-unknown}. */
public final class SupervisionZoneUnknown implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "supervision.zone-unknown", "Every zone is a unit of the chain.", Level.ERROR)
          .yieldingTo("name.duplicate", "name.unreadable");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Supervision supervision = site.supervision().orNull();
    if (supervision == null || !site.allNamesKnown()) {
      return;
    }
    Set<String> names = new LinkedHashSet<>();
    site.units().forEach(unit -> unit.name().optional().ifPresent(names::add));
    SpellingSuggester known = new SpellingSuggester(names);
    for (Setting<String> zone : supervision.zones().or(List.of())) {
      String name = zone.orNull();
      if (name != null && !names.contains(name)) {
        Optional<String> nearest = known.suggest(name);
        if (nearest.filter(NameUnreadable::isUnreadable).isPresent()) {
          continue;
        }
        String remedy =
            nearest
                .map(near -> "write \"" + near + "\"")
                .orElse("delete the zone, or add the unit to the chain");
        context.report(
            context
                .finding(
                    zone.place(),
                    new Message(
                        "the zone \"" + name + "\" is no unit of the chain",
                        "the software shows a unit that never answers, and each try costs a"
                            + " timeout",
                        remedy))
                .fixedBy(
                    nearest
                        .map(
                            near ->
                                FixDraft.inFile(
                                    "Spell the zone \"" + near + "\"",
                                    Edit.write(zone.place(), near)))
                        .orElse(null)));
      }
    }
  }
}
