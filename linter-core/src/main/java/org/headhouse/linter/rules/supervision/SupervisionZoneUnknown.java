package org.headhouse.linter.rules.supervision;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.rules.name.NameUnreadable;
import org.headhouse.linter.rules.name.OldNames;
import org.headhouse.linter.rules.name.SameLetters;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Equipment;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Supervision;
import org.headhouse.linter.source.SpellingSuggester;
import org.jspecify.annotations.Nullable;

/** {@code supervision.zone-unknown}. */
public final class SupervisionZoneUnknown implements SiteRule {
  private static final String COSTS =
      "the software polls something that never answers, and each try costs a timeout";

  private static final String ELSE = "remove it, or add the unit to the chain";

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
    List<Setting<String>> zones = supervision.zones().or(List.of());
    Set<String> unlisted = new LinkedHashSet<>(names);
    zones.forEach(zone -> unlisted.remove(zone.or("")));
    SpellingSuggester known = new SpellingSuggester(unlisted);
    OldNames old = new OldNames(site, context);
    for (Setting<String> zone : zones) {
      String name = zone.orNull();
      if (name != null && !names.contains(name)) {
        ChainItem other = item(site, name);
        Finding renamed = other == null ? old.finding(zone, COSTS, ELSE) : null;
        if (renamed != null) {
          context.report(renamed);
          continue;
        }
        Optional<String> nearest =
            other == null && !old.has(name) ? known.suggest(name) : Optional.empty();
        if (nearest.filter(NameUnreadable::isUnreadable).isPresent()) {
          continue;
        }
        context.report(
            finding(context, zone, name, other, nearest)
                .fixedBy(
                    nearest
                        .map(
                            near ->
                                new FixDraft(
                                    known.isCertain(name, near) ? FixKind.SAFE : FixKind.PROPOSED,
                                    "Spell the zone \"" + near + "\"",
                                    List.of(Edit.write(zone.place(), near))))
                        .orElse(null)));
      }
    }
  }

  private static @Nullable ChainItem item(Site site, String name) {
    return site.items().stream().filter(item -> item.name().is(name)).findFirst().orElse(null);
  }

  private static Finding finding(
      RuleContext context,
      Setting<String> zone,
      String name,
      @Nullable ChainItem other,
      Optional<String> nearest) {
    if (other != null) {
      return context
          .finding(
              zone.place(),
              new Message(
                  "the zone \""
                      + name
                      + "\" is not a unit but "
                      + (other instanceof Equipment ? "" : "a ")
                      + other.kind().word(),
                  "a zone shows the readings and alarms of a unit",
                  "delete the zone"))
          .related(other.name().place().region(), other.called() + " is on the chain here");
    }
    return context.finding(
        zone.place(),
        new Message(
            "zone \"" + name + "\" is not a unit of the chain",
            COSTS,
            nearest.map(near -> SameLetters.remedy(name, near)).orElse(ELSE)));
  }
}
