package org.headhouse.linter.visit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.proof.VisitEntry;
import org.headhouse.linter.site.Measured;
import org.headhouse.linter.site.MeasuredAt;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Quantity;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.StormResponse;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/** What records have already, by what was seen or measured and where. */
final class RecordedValues {
  private static final String SEEN = "";

  private final Site site;
  private final Map<Key, List<String>> values = new HashMap<>();

  /** How a row compares with the records. */
  enum Comparison {
    /** They have nothing of the kind. */
    NEW,
    /** They have the same. */
    SAME,
    /** They have something else. */
    OTHER
  }

  private record Key(VisitEntry entry, String item, @Nullable Side side) {}

  RecordedValues(Site site, List<ProvingRecord> records) {
    this.site = site;
    records.forEach(this::add);
  }

  private void add(ProvingRecord one) {
    seen(VisitEntry.READINGS, one.outdoorReadingsSeen());
    seen(VisitEntry.STALE_RESPONSE, one.staleResponseSeen());
    seen(VisitEntry.STALE_HOLD, one.staleResponseSeen());
    for (Setting<StormResponse> storm : one.stormResponseSeen().or(List.of())) {
      storm.optional().ifPresent(this::storm);
    }
    Measured measured = one.measured().orNull();
    Unit head = site.head();
    if (measured != null && head != null) {
      String name = head.name().or("");
      measured(name, null, measured.pairResistance(), measured.idleVoltage());
    }
    if (measured != null) {
      for (Setting<MeasuredAt> place : measured.elsewhere().or(List.of())) {
        place.optional().ifPresent(this::measured);
      }
    }
  }

  private void seen(VisitEntry entry, Setting<List<Setting<String>>> names) {
    names
        .or(List.of())
        .forEach(name -> name.optional().ifPresent(it -> put(entry, it, null, SEEN)));
  }

  private void storm(StormResponse storm) {
    String name = storm.unit().or("");
    put(VisitEntry.STORM_RESPONSE, name, null, written(storm.closedIn()));
    put(VisitEntry.WIND_LIMIT, name, null, written(storm.limit()));
  }

  private void measured(MeasuredAt place) {
    String name = place.at().or("");
    boolean ofRepeater =
        site.items().stream().anyMatch(item -> item.name().is(name) && item instanceof Repeater);
    // As for bias: at a repeater, the side away from the head unit where none is written.
    Side side = ofRepeater ? place.side().or(Side.OUT) : null;
    measured(name, side, place.pairResistance(), place.idleVoltage());
  }

  private void measured(
      String item,
      @Nullable Side side,
      Setting<? extends Quantity> resistance,
      Setting<? extends Quantity> voltage) {
    if (!resistance.isMissing()) {
      put(VisitEntry.PAIR_RESISTANCE, item, side, written(resistance));
    }
    if (!voltage.isMissing()) {
      put(VisitEntry.IDLE_VOLTAGE, item, side, written(voltage));
    }
  }

  private static String written(Setting<? extends Quantity> setting) {
    return setting.optional().map(Quantity::written).orElse(SEEN);
  }

  private void put(VisitEntry entry, String item, @Nullable Side side, String value) {
    values.computeIfAbsent(new Key(entry, item, side), it -> new ArrayList<>()).add(value);
  }

  private List<String> of(VisitRow row) {
    return values.getOrDefault(new Key(row.entry(), row.name(), row.side()), List.of());
  }

  /** Compares a row that says something. */
  Comparison compare(VisitRow row) {
    List<String> recorded = of(row);
    if (recorded.isEmpty()) {
      return Comparison.NEW;
    }
    String value = row.value();
    boolean same =
        value == null
            ? row.found() == Found.Seen.YES
            : recorded.stream().anyMatch(one -> isSame(row.entry(), one, value));
    return same ? Comparison.SAME : Comparison.OTHER;
  }

  private static boolean isSame(VisitEntry entry, String one, String other) {
    Measurand measurand = Measurand.of(entry);
    return measurand != null && measurand.size(one) == measurand.size(other);
  }

  /** What they have of a row's kind, for a message. */
  String shown(VisitRow row) {
    String first = of(row).get(0);
    Measurand measurand = Measurand.of(row.entry());
    return !first.equals(SEEN) ? first : measurand == null ? "seen" : "seen, without a value";
  }

  /** Whether they say that what a row is about was seen. */
  boolean isSeen(VisitRow row) {
    return !of(row).isEmpty();
  }
}
