package org.headhouse.linter.rules.outdoor;

import java.util.List;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.ReadingSource;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.WeatherStation;

/**
 * {@code outdoor.not-from-head}: one result for each reading that is taken from elsewhere, one for
 * all that are not written.
 */
public final class OutdoorNotFromHead implements SiteRule {
  private static final RequiredSource HEAD =
      new RequiredSource(
          ReadingSource.HEAD,
          storm ->
              storm
                  ? "without the shared reading its vents stay open in a storm"
                  : "without the shared reading it controls its climate differently from the"
                      + " other units",
          (unit, readings, source) ->
              source == ReadingSource.NONE
                  ? unit + " is set to none for " + readings
                  : unit + " is set to its own sensor for " + readings);

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "outdoor.not-from-head",
              "A follower takes every reading of the weather station from the head unit.",
              Level.ERROR)
          .yieldingTo("head.missing", "station.not-at-head");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    WeatherStation station = site.weatherStation().orNull();
    if (station == null || station.readings().orNull() == null) {
      return;
    }
    List<Reading> measured = station.measured();
    for (Unit unit : site.units()) {
      // A station at the wrong unit and a head unit of the wrong role have rules of their own.
      if (unit.isFollower() && !site.hasStation(unit) && !unit.outdoor().isFaulty()) {
        HEAD.check(unit, measured, context);
      }
    }
  }
}
