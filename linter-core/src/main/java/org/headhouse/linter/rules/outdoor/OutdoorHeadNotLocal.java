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

/** {@code outdoor.head-not-local}. */
public final class OutdoorHeadNotLocal implements SiteRule {
  private static final String REASON =
      "the station is wired to it, and what it does not read it cannot share";

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "outdoor.head-not-local",
              "The head unit takes the readings of the weather station as local.",
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
    if (station == null
        || head == null
        || head.outdoor().isFaulty()
        || isElsewhere(site, station, head)) {
      return;
    }
    Outdoor outdoor = head.outdoor().orNull();
    List<String> missing = new ArrayList<>();
    for (Reading reading : Reading.values()) {
      if (!station.measures(reading)) {
        continue;
      }
      Setting<ReadingSource> source = outdoor == null ? null : outdoor.source(reading);
      if (source == null || source.isMissing()) {
        missing.add(reading.word());
      } else if (source.isGiven() && !source.is(ReadingSource.LOCAL)) {
        context.report(
            context
                .finding(source.place(), notLocal(head, reading, source.or(ReadingSource.NONE)))
                .fixedBy(Sources.written(source, reading, ReadingSource.LOCAL, head, site)));
      }
    }
    if (!missing.isEmpty()) {
      context.report(
          context
              .finding(
                  outdoor == null ? head.name().place() : outdoor.place(),
                  new Message(
                      "the head unit "
                          + head.called()
                          + " does not say where it takes "
                          + String.join(", ", missing)
                          + " from",
                      REASON,
                      "write " + String.join(": local, ", missing) + ": local under outdoor"))
              .fixedBy(Sources.added(outdoor, missing, ReadingSource.LOCAL, head, site)));
    }
  }

  /** A station at another unit is told of the station. */
  private static boolean isElsewhere(Site site, WeatherStation station, Unit head) {
    Unit at = site.unit(station.at().orNull());
    return at != null && !at.isSameItemAs(head);
  }

  private static Message notLocal(Unit head, Reading reading, ReadingSource source) {
    return new Message(
        "the head unit " + head.called() + " takes " + reading.word() + " from " + source.word(),
        REASON,
        "write " + reading.word() + ": local");
  }
}
