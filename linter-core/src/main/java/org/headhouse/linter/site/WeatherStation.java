package org.headhouse.linter.site;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.stability.Internal;

/**
 * The weather station.
 *
 * @param place the key {@code weather-station}
 * @param at the name of the unit that it is wired to
 * @param readings what it measures, each with its place
 * @param maximumAge how old a reading may become at any follower
 * @param averaging over which it averages the wind
 * @param closeWithin from the gust until the vents have to be shut
 */
public record WeatherStation(
    Place place,
    Setting<String> at,
    Setting<List<Setting<Reading>>> readings,
    Setting<Interval> maximumAge,
    Setting<Interval> averaging,
    Setting<Interval> closeWithin) {
  @Internal
  public WeatherStation {}

  /** What the station measures, in the order of readings, as far as the file is understood. */
  public List<Reading> measured() {
    List<Reading> measured = new ArrayList<>();
    for (Reading reading : Reading.values()) {
      if (measures(reading)) {
        measured.add(reading);
      }
    }
    return measured;
  }

  /** Whether the station measures a reading, as far as the file is understood. */
  public boolean measures(Reading reading) {
    List<Setting<Reading>> given = readings.orNull();
    for (int i = 0; given != null && i < given.size(); i++) {
      if (given.get(i).is(reading)) {
        return true;
      }
    }
    return false;
  }

  /** Whether every reading of the station is understood, so that what is not listed is lacking. */
  public boolean isComplete() {
    List<Setting<Reading>> given = readings.orNull();
    for (int i = 0; given != null && i < given.size(); i++) {
      if (!given.get(i).isGiven()) {
        return false;
      }
    }
    return given != null;
  }
}
