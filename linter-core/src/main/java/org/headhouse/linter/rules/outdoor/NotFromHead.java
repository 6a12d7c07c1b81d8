package org.headhouse.linter.rules.outdoor;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Outdoor;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.ReadingSource;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.WeatherStation;

/**
 * {@code outdoor.not-from-head}: one result for each reading that is taken from elsewhere, one for
 * all that are not written.
 */
public final class NotFromHead implements SiteRule {
  private static final String REASON =
      "a follower without the shared reading leaves its vents open in a storm";

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "outdoor.not-from-head",
          "A follower takes every reading of the weather station from the head unit.",
          Level.ERROR);

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
      // A station at the wrong unit, or a head unit of the wrong role, is told as such.
      boolean hasStation = unit.name().isGiven() && station.at().is(unit.name().or(""));
      if (unit.isFollower() && !hasStation && !unit.outdoor().isFaulty()) {
        check(unit, measured, site, context);
      }
    }
  }

  private static void check(Unit unit, List<Reading> measured, Site site, RuleContext context) {
    Outdoor outdoor = unit.outdoor().orNull();
    List<String> missing = new ArrayList<>(0);
    for (Reading reading : measured) {
      Setting<ReadingSource> source = outdoor == null ? null : outdoor.source(reading);
      if (source == null || source.isMissing()) {
        missing.add(reading.word());
      } else if (source.isGiven() && !source.is(ReadingSource.HEAD)) {
        context.report(
            context
                .finding(source.place(), elsewhere(unit, reading, source.or(ReadingSource.NONE)))
                .fixedBy(Sources.written(source, reading, ReadingSource.HEAD, unit, site)));
      }
    }
    if (!missing.isEmpty()) {
      context.report(
          context
              .finding(
                  outdoor == null ? unit.name().place() : outdoor.place(),
                  new Message(
                      unit.called()
                          + " does not say where it takes "
                          + String.join(", ", missing)
                          + " from",
                      REASON,
                      "write " + String.join(": head, ", missing) + ": head under outdoor"))
              .fixedBy(Sources.added(outdoor, missing, ReadingSource.HEAD, unit, site)));
    }
  }

  private static Message elsewhere(Unit unit, Reading reading, ReadingSource source) {
    String fact =
        source == ReadingSource.NONE
            ? unit.called() + " does not take " + reading.word()
            : unit.called() + " looks for " + reading.word() + " at a sensor of its own";
    return new Message(fact, REASON, "write " + reading.word() + ": head");
  }
}
