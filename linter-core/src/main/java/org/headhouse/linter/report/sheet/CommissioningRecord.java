package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.WeatherStation;
import org.headhouse.linter.yaml.DoubleQuoted;

/**
 * The part of a site's file that records the proof, as YAML to complete and to paste over the key
 * {@code stage}. Nobody has signed it, and what is still to be measured and seen is a comment:
 * pasted untouched it proves nothing.
 */
final class CommissioningRecord {
  private CommissioningRecord() {}

  static String of(Site site) {
    List<String> lines = new ArrayList<>();
    lines.add("stage: commissioned");
    lines.add("commissioning:");
    lines.add("  date: \"?\"  # the day of the visit, as 2026-03-14");
    lines.add("  by: \"?\"  # the initials of who proved the line");
    lines.add("  # Add what was really measured and seen, and delete its # and nothing else.");
    lines.add("  # measured: {pair-resistance: ___ ohm, idle-voltage: ___ V}");
    List<String> followers = followers(site);
    if (!followers.isEmpty()) {
      lines.add("  # outdoor-readings-seen:  # the units whose display showed them");
      followers.forEach(name -> lines.add("  #   - " + DoubleQuoted.of(name)));
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
