package org.headhouse.linter.report.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.WeatherStation;
import org.headhouse.linter.yaml.DoubleQuoted;

/**
 * The part of a site's file that records the proof, as YAML to complete and to paste over the key
 * {@code stage}. What is still to be measured is a comment, so that no value enters the file
 * unmeasured.
 */
final class CommissioningRecord {
  private CommissioningRecord() {}

  static String of(Site site, LocalDate date) {
    List<String> lines = new ArrayList<>();
    lines.add("stage: commissioned");
    lines.add("commissioning:");
    lines.add("  date: " + date + "  # the day of the visit");
    lines.add("  by: \"?\"  # the initials of who proved the line");
    lines.add("  # Write what the meter showed, and take the # away:");
    lines.add("  # measured: {pair-resistance: ___ ohm, idle-voltage: ___ V}");
    List<String> followers = followers(site);
    if (!followers.isEmpty()) {
      lines.add("  outdoor-readings-seen:  # delete each unit whose display did not show them");
      followers.forEach(name -> lines.add("    - " + DoubleQuoted.of(name)));
    }
    return String.join("\n", lines) + "\n";
  }

  private static List<String> followers(Site site) {
    WeatherStation station = site.weatherStation().orNull();
    List<String> names = new ArrayList<>();
    for (Unit unit : site.units()) {
      String name = unit.name().orNull();
      if (name != null
          && unit.isFollower()
          && !names.contains(name)
          && (station == null || !station.at().is(name))) {
        names.add(name);
      }
    }
    return names;
  }
}
