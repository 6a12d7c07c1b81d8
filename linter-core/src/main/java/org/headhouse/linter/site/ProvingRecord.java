package org.headhouse.linter.site;

import java.time.LocalDate;
import java.util.List;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * What was proved on one visit: of the whole line, or after a change of a part of it.
 *
 * @param place the record as a whole
 * @param day on which it was proved
 * @param by who can be asked about it
 * @param reason what was changed; missing on the first visit
 * @param outdoorReadingsSeen the units whose display showed the outdoor readings, by name
 * @param stormResponseSeen the units that shut their vents when the wind limit was passed
 * @param staleResponseSeen the units that shut their vents when no readings came, by name
 * @param meter what was measured with
 */
public record ProvingRecord(
    Place place,
    Setting<RecordDate> day,
    Setting<String> by,
    Setting<String> reason,
    Setting<Measured> measured,
    Setting<List<Setting<String>>> outdoorReadingsSeen,
    Setting<List<Setting<StormResponse>>> stormResponseSeen,
    Setting<List<Setting<String>>> staleResponseSeen,
    Setting<Meter> meter) {
  @Internal
  public ProvingRecord {}

  /** The day on which it was proved; null where it is not known, or not filled in yet. */
  public @Nullable LocalDate dayOrNull() {
    RecordDate written = day.orNull();
    return written == null ? null : written.day();
  }

  /** Whether the calibration of the meter had ended before that day, as far as both are known. */
  public boolean wasMeterExpired() {
    Meter with = meter.orNull();
    LocalDate until = with == null ? null : with.calibratedUntil().orNull();
    LocalDate proved = dayOrNull();
    return until != null && proved != null && until.isBefore(proved);
  }
}
