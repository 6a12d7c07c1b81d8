package org.headhouse.linter.rules.outdoor;

import org.headhouse.linter.result.Level;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ReadingSource;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.WeatherStation;

/** {@code outdoor.head-not-local}. */
public final class OutdoorHeadNotLocal implements SiteRule {
  private static final RequiredSource LOCAL =
      new RequiredSource(
          ReadingSource.LOCAL,
          storm ->
              "the station is wired to it, and it cannot share a reading that it does not take"
                  + " itself",
          (unit, readings, source) -> unit + " is set to " + source.word() + " for " + readings);

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "outdoor.head-not-local",
              "Every reading of the weather station is set to local at the head unit.",
              Level.ERROR)
          .yieldingTo("head.missing", "head.duplicate", "station.not-at-head");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    WeatherStation station = site.weatherStation().orNull();
    Unit head = site.head();
    if (station != null
        && head != null
        && !head.outdoor().isFaulty()
        && !isElsewhere(site, station, head)) {
      LOCAL.check(head, station.measured(), context);
    }
  }

  /** Then {@code station.not-at-head} reports the station. */
  private static boolean isElsewhere(Site site, WeatherStation station, Unit head) {
    Unit at = site.unit(station.at().orNull());
    return at != null && !at.isSameItemAs(head);
  }
}
