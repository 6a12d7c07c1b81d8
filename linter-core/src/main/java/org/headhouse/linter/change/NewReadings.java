package org.headhouse.linter.change;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.WeatherStation;

/**
 * Divides the settings of a unit: what takes a reading that the station does not measure yet waits
 * until its sensor is fitted, so that no unit acts on a reading that is not there.
 */
final class NewReadings {
  private final Set<String> words = new HashSet<>();

  NewReadings(Site before, Site after) {
    WeatherStation was = before.weatherStation().orNull();
    WeatherStation will = after.weatherStation().orNull();
    if (was != null && will != null) {
      for (Reading reading : Reading.values()) {
        if (will.measures(reading) && !was.measures(reading)) {
          words.add(reading.word());
        }
      }
    }
  }

  /** What is set before the wiring. */
  List<ValueChange> early(TrackedItem item) {
    return UnitSettings.changed(item).stream()
        .filter(change -> !words.contains(change.what()))
        .toList();
  }

  /** What is set after it. */
  List<ValueChange> late(TrackedItem item) {
    return UnitSettings.changed(item).stream()
        .filter(change -> words.contains(change.what()))
        .toList();
  }
}
