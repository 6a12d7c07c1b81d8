package org.headhouse.linter.rules.commissioning;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.WeatherStation;

/** {@code commissioning.unit-unseen}: common practice, no source. */
public final class CommissioningUnitUnseen implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "commissioning.unit-unseen",
              "The record names every follower as one whose display showed the outdoor readings.",
              Level.ERROR)
          .yieldingTo("head.missing", "station.not-at-head", "reference.unknown");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Commissioning record = site.commissioning().orNull();
    if (record == null
        || !site.stage().is(Stage.COMMISSIONED)
        || record.records().stream().anyMatch(one -> one.outdoorReadingsSeen().isFaulty())) {
      return;
    }
    Set<String> seen = new HashSet<>();
    for (ProvingRecord one : record.records()) {
      one.outdoorReadingsSeen().or(List.of()).forEach(name -> seen.add(name.or("")));
    }
    List<String> unseen = new ArrayList<>();
    Set<String> misspelt = site.misspelt(seen);
    for (Unit unit : site.units()) {
      String name = unit.name().orNull();
      if (name != null
          && unit.isFollower()
          && !hasStation(unit, site)
          && !seen.contains(name)
          && !misspelt.contains(name)) {
        unseen.add(unit.called());
      }
    }
    if (!unseen.isEmpty()) {
      context.report(
          record.outdoorReadingsSeen().isMissing()
              ? record.place()
              : record.outdoorReadingsSeen().place(),
          new Message(
              "the record does not say that the outdoor readings were seen at "
                  + String.join(", ", unseen),
              "a follower without them leaves its vents open in a storm",
              "look at the display of each, and add its name to outdoor-readings-seen"));
    }
  }

  /** Then {@code head.missing} or {@code station.not-at-head} reports the cause. */
  private static boolean hasStation(Unit unit, Site site) {
    WeatherStation station = site.weatherStation().orNull();
    return station != null && station.at().is(unit.name().or(""));
  }
}
