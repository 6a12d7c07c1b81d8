package org.headhouse.linter.bind;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.site.Outdoor;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.ReadingSource;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.WeatherStation;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.yaml.Scalar;
import org.jspecify.annotations.Nullable;

/**
 * Binds where a unit takes the outdoor readings from: each on its own, or one word for all that the
 * weather station has.
 *
 * @param measured the readings of the station, as far as they are understood
 */
record OutdoorBinder(List<Reading> measured) {
  private static final List<Reading> READINGS = List.of(Reading.values());
  private static final List<ReadingSource> SOURCES = List.of(ReadingSource.values());
  private static final List<ReadingSource> SOURCES_OF_ALL =
      List.of(ReadingSource.LOCAL, ReadingSource.HEAD);

  static OutdoorBinder of(@Nullable WeatherStation station) {
    return new OutdoorBinder(station == null ? List.of() : station.measured());
  }

  Setting<Outdoor> outdoor(ValueReader value) {
    if (value.cursor() == null || !(value.cursor().node() instanceof Scalar)) {
      return value.mapping(OutdoorBinder::each);
    }
    Setting<ReadingSource> all = value.word(SOURCES_OF_ALL);
    Map<Reading, Setting<ReadingSource>> sources = new EnumMap<>(Reading.class);
    measured.forEach(reading -> sources.put(reading, all));
    return all.isFaulty()
        ? new Setting.Faulty<>(all.place())
        : new Setting.Given<>(new Outdoor(all.place(), sources, true), all.place());
  }

  private static Outdoor each(MappingReader keys, Place place) {
    Map<Reading, Setting<ReadingSource>> sources = new EnumMap<>(Reading.class);
    for (Reading reading : READINGS) {
      Setting<ReadingSource> source = keys.optional(reading.word()).word(SOURCES);
      if (!source.isMissing()) {
        sources.put(reading, source);
      }
    }
    return new Outdoor(place, sources, false);
  }
}
