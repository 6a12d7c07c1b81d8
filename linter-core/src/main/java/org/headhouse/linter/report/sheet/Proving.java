package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.StaleAction;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.WeatherStation;
import org.jspecify.annotations.Nullable;

/**
 * What is measured and seen on site.
 *
 * @param station the readings of the station, to be compared with
 * @param at the unit that the station is wired to
 * @param record the part of the file that records the proof
 */
record Proving(
    List<Measurement> measurements,
    List<String> station,
    String at,
    List<UnitProof> units,
    String record) {

  Proving {
    measurements = List.copyOf(measurements);
    station = List.copyOf(station);
    units = List.copyOf(units);
  }

  /**
   * What is seen at one unit.
   *
   * @param readings whether the shared readings are looked for on its display
   * @param vents the required position of its vents in a storm; empty where it moves none
   * @param stale what it must do once readings stop; empty where the file does not say
   */
  record UnitProof(String name, String address, boolean readings, String vents, String stale) {}

  static Proving of(SiteFacts facts, SheetSettings settings) {
    Site site = facts.site();
    WeatherStation station = site.weatherStation().orNull();
    List<UnitProof> units = new ArrayList<>();
    for (Unit unit : site.units()) {
      units.add(
          new UnitProof(
              PlainText.name(unit),
              UnitWords.address(unit),
              unit.isFollower(),
              UnitWords.hasVents(unit) ? PlainText.word(unit.vents()) : "",
              unit.onStaleReadings().optional().map(Proving::stale).orElse("")));
    }
    return new Proving(
        Measurements.of(facts.figures().segments(), settings.policy().ohmmeter()),
        readings(station),
        station == null ? "" : PlainText.name(station.at().or(PlainText.NOT_WRITTEN)),
        units,
        CommissioningRecord.of(site));
  }

  private static List<String> readings(@Nullable WeatherStation station) {
    List<String> readings = new ArrayList<>();
    for (Reading reading : Reading.values()) {
      if (station != null && station.measures(reading)) {
        readings.add(PlainText.word(reading));
      }
    }
    return readings;
  }

  private static String stale(StaleAction action) {
    return switch (action) {
      case CLOSE -> "closes";
      case CLOSE_AND_ALARM -> "closes and gives an alarm";
      case HOLD -> "holds";
      case ALARM -> "gives an alarm";
    };
  }
}
