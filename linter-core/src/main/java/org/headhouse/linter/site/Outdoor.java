package org.headhouse.linter.site;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.headhouse.linter.source.Place;

/**
 * Where a unit takes the outdoor readings from.
 *
 * @param place the key {@code outdoor}; the value where one word is written for all readings
 * @param sources the readings that are written; with one word for all, those of the station
 * @param forAll whether one word is written for all readings
 */
public record Outdoor(Place place, Map<Reading, Setting<ReadingSource>> sources, boolean forAll) {

  public Outdoor {
    Map<Reading, Setting<ReadingSource>> copy = new EnumMap<>(Reading.class);
    copy.putAll(sources);
    sources = Collections.unmodifiableMap(copy);
  }

  /** The source of a reading. */
  public Setting<ReadingSource> source(Reading reading) {
    Setting<ReadingSource> source = sources.get(reading);
    return source == null ? new Setting.Missing<>(place) : source;
  }
}
