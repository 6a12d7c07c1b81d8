package org.headhouse.linter.rules.supervision;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.headhouse.linter.change.Renamings;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.rules.name.OldNames;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Supervision;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.source.Place;

/** {@code supervision.zone-missing}. */
public final class SupervisionZoneMissing implements SiteRule {
  private static final int MOST_NAMED = 5;

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
    List<Unit> missing = new ArrayList<>();
    Map<Integer, List<String>> added = new TreeMap<>();
    int place = 0;
    for (Unit unit : site.units()) {
      String name = unit.name().orNull();
      place = name == null ? place : places.getOrDefault(name, place);
      if (name != null && !listed.contains(name) && !misspelt.contains(name)) {
        missing.add(unit);
        added.computeIfAbsent(place, index -> new ArrayList<>()).add(name);
      }
    }
    if (!missing.isEmpty()) {
      report(missing, added, supervision.zones().place(), context);
    }
  }

  /**
   * @param added the names that the list lacks, by the number of zones in front of them
   */
  private static void report(
      List<Unit> missing, Map<Integer, List<String>> added, Place zones, RuleContext context) {
    List<String> called = missing.stream().map(Unit::called).toList();
    String some =
        called.size() <= MOST_NAMED
            ? String.join(", ", called)
            : String.join(", ", called.subList(0, MOST_NAMED))
                + " and "
                + (called.size() - MOST_NAMED)
                + " more";
    boolean one = missing.size() == 1;
    Finding finding =
        context
            .finding(
                zones,
                new Message(
                    "the zone list lacks " + some,
                    one ? "nobody sees the alarms of that unit" : "nobody sees their alarms",
                    one ? "add " + some : "add them in the order of the chain"))
            .aboutItems(ChainItem.names(missing))
            .fixedBy(
                new FixDraft(
                    FixKind.SAFE,
                    (one ? "Add the zone " : "Add the zones ") + some,
                    added.entrySet().stream()
                        .map(
                            entry ->
                                (Edit) new Edit.AddItems(zones, entry.getKey(), entry.getValue()))
                        .toList()));
    for (Unit unit : missing.subList(0, Math.min(missing.size(), MOST_NAMED))) {
      finding =
          finding.related(unit.name().place().region(), unit.called() + " is on the chain here");
    }
    context.report(finding);
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
