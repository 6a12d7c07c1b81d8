package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.MeasuringPlace;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.proof.StaleResponse;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.yaml.DoubleQuoted;

/**
 * The part of a site's file that records the proof, as YAML to complete and to paste over the key
 * {@code stage}. Nobody has signed it, and what is still to be measured and seen is a comment:
 * pasted untouched it proves nothing.
 *
 * <p>A line without its first {@code #} has the right indentation, and one level deeper or not, so
 * it has where an editor takes the space behind it as well.
 */
final class CommissioningRecord {
  private static final String VALUES = "pair-resistance: ___ ohm, idle-voltage: ___ V";

  private final Site site;
  private final List<SegmentLine> segments;
  private final List<String> lines = new ArrayList<>();

  private CommissioningRecord(Site site, List<SegmentLine> segments) {
    this.site = site;
    this.segments = segments;
  }

  static String of(Site site, List<SegmentLine> segments, Measure measure) {
    CommissioningRecord record = new CommissioningRecord(site, segments);
    record.signature();
    record.measured();
    record.seen(
        "outdoor-readings-seen:  # the followers whose display showed them",
        "",
        record.names(record::showsReadings));
    record.seen(
        "storm-response-seen:  # vents shut over the wind limit of the unit; the time by the watch",
        ", limit: ___ " + (measure == Measure.US ? "mph" : "m/s") + ", closed-in: ___ s}",
        record.names(VentWords::mayMove));
    record.seen(
        "stale-response-seen:  # vents shut when the readings stopped",
        "",
        record.names(VentWords::mayMove),
        record.names(StaleResponse::staysOpen));
    return String.join("\n", record.lines) + "\n";
  }

  private void signature() {
    lines.add("stage: commissioned");
    lines.add("commissioning:");
    lines.add("  date: \"?\"  # the day of the visit, as 2026-03-14");
    lines.add("  by: \"?\"  # the name of who proved the line");
    lines.add("  # Of the lines below keep what was really measured and seen: fill in each ___,");
    lines.add("  # and delete the # and nothing else. Delete what was not measured or not seen.");
    lines.add("  #meter: {type: \"___\", serial-number: \"___\", calibrated-until: ____-__-__}");
  }

  private void measured() {
    lines.add("  #measured:");
    lines.add("  #  pair-resistance: ___ ohm  # at the head unit");
    lines.add("  #  idle-voltage: ___ V  # at the head unit, D1 against D0: with its sign");
    Set<String> places = places();
    if (!places.isEmpty()) {
      lines.add("  #  elsewhere:");
      places.forEach(place -> lines.add("  #    - {at: " + place + ", " + VALUES + "}"));
    }
  }

  /** Where the sheet asks for a measurement, but for the head unit, which has keys of its own. */
  private Set<String> places() {
    Set<String> places = new LinkedHashSet<>();
    for (SegmentLine segment : segments) {
      for (MeasuringPlace place : segment.measuringPlaces()) {
        String name = place.item().name().orNull();
        if (name != null && !place.item().isSameItemAs(site.head())) {
          Side side = place.side();
          places.add(DoubleQuoted.of(name) + (side == null ? "" : ", side: " + side.word()));
        }
      }
    }
    return places;
  }

  private void seen(String key, String details, Set<String> names) {
    seen(key, details, names, Set.of());
  }

  /**
   * @param staying those of the names whose vents do not close, as they are set
   */
  private void seen(String key, String details, Set<String> names, Set<String> staying) {
    if (!names.isEmpty()) {
      lines.add("  #" + key);
      String start = details.isEmpty() ? "" : "{unit: ";
      names.forEach(
          name ->
              lines.add(
                  "  #  - "
                      + start
                      + DoubleQuoted.of(name)
                      + details
                      + (staying.contains(name) ? "  # they stay where they are, as set" : "")));
    }
  }

  private Set<String> names(Predicate<Unit> wanted) {
    Set<String> names = new LinkedHashSet<>();
    for (Unit unit : site.units()) {
      String name = unit.name().orNull();
      if (name != null && wanted.test(unit)) {
        names.add(name);
      }
    }
    return names;
  }

  private boolean showsReadings(Unit unit) {
    return unit.isFollower() && !site.hasStation(unit);
  }
}
