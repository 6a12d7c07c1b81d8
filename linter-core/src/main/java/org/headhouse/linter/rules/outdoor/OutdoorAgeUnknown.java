package org.headhouse.linter.rules.outdoor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import org.headhouse.linter.figures.StormFigures;
import org.headhouse.linter.figures.StormSum;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.WeatherStation;

/** {@code outdoor.age-unknown}: what is not known is taken neither for 0 nor for a usual value. */
public final class OutdoorAgeUnknown implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "outdoor.age-unknown",
          "If the site limits the age of readings or the time to close vents, the file has every value needed to compute them.",
          Level.WARNING);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    WeatherStation station = site.weatherStation().orNull();
    if (station == null || !(station.maximumAge().isGiven() || station.closeWithin().isGiven())) {
      return;
    }
    Missing missing = new Missing(site, station, context.figures().storm());
    if (missing.count > 0) {
      boolean closing = station.closeWithin().isGiven();
      context.report(
          context
              .finding(
                  closing ? station.closeWithin().place() : station.maximumAge().place(),
                  new Message(
                      "the file lacks "
                          + (missing.count == 1
                              ? "a setting that decides "
                              : missing.count + " settings that decide ")
                          + (closing
                              ? "whether the vents close in time"
                              : "how old readings become"),
                      "without it nobody can compute whether the vents shut before a storm"
                          + " damages them",
                      "find out and set " + missing.inWords()))
              .about(missing.cases));
    }
  }

  /** What the sums need and the file does not have. What it has and is faulty is reported. */
  private static final class Missing {
    /** The units without each key; a key that is no unit's has none. */
    private final Map<String, List<String>> unitsByKey = new LinkedHashMap<>();

    private final List<Finding.Case> cases = new ArrayList<>();
    private int count;

    Missing(Site site, WeatherStation station, StormFigures storm) {
      boolean closing = station.closeWithin().isGiven();
      List<StormSum> sums = storm.sums();
      boolean ages = station.maximumAge().isGiven() && hasFollower(site);
      if (closing) {
        ofStation(site, station, sums);
      }
      if (ages || (closing && waitsForBroadcast(sums))) {
        ofLine(site, storm);
      }
      for (StormSum sum : sums) {
        if (closing) {
          add(sum.closing(), "close-time", sum.unit());
        }
        if (sum.closesOnDeadLine()) {
          add(sum.unit().staleAfter(), "stale-after", sum.unit());
        }
      }
    }

    private static boolean hasFollower(Site site) {
      for (Unit unit : site.units()) {
        if (unit.isFollower()) {
          return true;
        }
      }
      return false;
    }

    private static boolean waitsForBroadcast(List<StormSum> sums) {
      for (StormSum sum : sums) {
        if (sum.waitsForBroadcast()) {
          return true;
        }
      }
      return false;
    }

    private void ofStation(Site site, WeatherStation station, List<StormSum> sums) {
      if (station.isComplete() && !station.measures(Reading.WIND_SPEED)) {
        add("wind-speed among the readings of the station");
      }
      if (sums.isEmpty()) {
        for (Unit unit : site.units()) {
          add(unit.vents(), "vents", unit);
        }
      } else if (station.averaging().isMissing()) {
        add("averaging of the station");
      }
    }

    private void ofLine(Site site, StormFigures storm) {
      LineSettings line = site.line().orNull();
      if (line != null && line.broadcast().isMissing()) {
        add("the broadcast of the line's traffic");
      }
      if (!storm.pollsKnown()) {
        add("the polling of the supervision");
      }
    }

    private void add(Setting<?> setting, String key, Unit unit) {
      if (setting.isMissing()) {
        unitsByKey.computeIfAbsent(key, any -> new ArrayList<>()).add(unit.called());
        cases.add(new Finding.Case(unit.name().orNull(), key));
        count++;
      }
    }

    private void add(String setting) {
      unitsByKey.put(setting, List.of());
      cases.add(new Finding.Case(null, setting));
      count++;
    }

    String inWords() {
      StringJoiner words = new StringJoiner("; ");
      unitsByKey.forEach(
          (key, units) ->
              words.add(units.isEmpty() ? key : key + " of " + String.join(", ", units)));
      return words.toString();
    }
  }
}
