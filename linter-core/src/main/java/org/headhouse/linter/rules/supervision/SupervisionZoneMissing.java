package org.headhouse.linter.rules.supervision;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.change.Renamings;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.rules.name.OldNames;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Supervision;
import org.headhouse.linter.site.Unit;

/** {@code supervision.zone-missing}. */
public final class SupervisionZoneMissing implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "supervision.zone-missing", "The supervising software lists every unit.", Level.ERROR)
          .yieldingTo("supervision.zone-unknown");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Supervision supervision = site.supervision().orNull();
    List<Setting<String>> zones = supervision == null ? null : supervision.zones().orNull();
    if (supervision == null || zones == null || zones.stream().anyMatch(Setting::isFaulty)) {
      return;
    }
    Set<String> listed = new HashSet<>();
    zones.forEach(zone -> listed.add(zone.or("")));
    Set<String> misspelt = site.misspelt(listed);
    misspelt.addAll(renamed(listed, site, context));
    Map<String, Integer> places = new HashMap<>();
    for (int i = 0; i < zones.size(); i++) {
      places.putIfAbsent(zones.get(i).or(""), i + 1);
    }
    int place = 0;
    for (Unit unit : site.units()) {
      String name = unit.name().orNull();
      place = name == null ? place : places.getOrDefault(name, place);
      if (name != null && !listed.contains(name) && !misspelt.contains(name)) {
        context.report(
            context
                .finding(
                    supervision.zones().place(),
                    new Message(
                        "the zones lack " + unit.called(),
                        "nobody sees an alarm of that unit",
                        "add " + unit.called() + " to the zones"))
                .concerning(name)
                .related(unit.name().place().region(), unit.called() + " is on the chain here")
                .fixedBy(
                    FixDraft.inFile(
                        "Add the zone " + unit.called(),
                        new Edit.AddItems(supervision.zones().place(), place, List.of(name)))));
      }
    }
  }

  /** The units that are listed by an old name, which {@code supervision.zone-unknown} reports. */
  private static Set<String> renamed(Set<String> listed, Site site, RuleContext context) {
    Set<String> renamed = new HashSet<>();
    if (context.earlier() != null) {
      OldNames old = new OldNames(site, context);
      for (String name : listed) {
        Renamings.Renaming one = site.unit(name) == null ? old.renaming(name) : null;
        if (one != null) {
          renamed.add(one.to());
        }
      }
    }
    return renamed;
  }
}
