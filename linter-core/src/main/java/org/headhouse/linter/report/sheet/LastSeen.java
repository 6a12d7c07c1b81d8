package org.headhouse.linter.report.sheet;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.StormResponse;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/**
 * Where the record says that something was seen at a unit; of several entries the last, as they are
 * in the order of the visits. Names count as they are written.
 */
final class LastSeen {
  private final Map<Proof.Kind, Map<String, Seen>> byKind = new EnumMap<>(Proof.Kind.class);

  /**
   * What one entry says.
   *
   * @param response with the limit and the time by the watch; null but for a storm response
   */
  record Seen(ProvingRecord record, @Nullable StormResponse response) {

    /** The day in words; empty where it is not known. */
    String day() {
      LocalDate day = record.dayOrNull();
      return day == null ? "" : SpokenText.day(day);
    }

    /** The wind limit as it is written; empty where none is. */
    String limit() {
      return response == null
          ? ""
          : response.limit().optional().map(limit -> PlainText.name(limit.written())).orElse("");
    }

    /** What the watch showed, as it is written; empty where nobody took it. */
    String closedIn() {
      return response == null
          ? ""
          : response.closedIn().optional().map(time -> PlainText.name(time.written())).orElse("");
    }
  }

  private LastSeen() {}

  static LastSeen of(Site site) {
    LastSeen last = new LastSeen();
    Commissioning commissioning = site.commissioning().orNull();
    if (commissioning != null) {
      commissioning.records().forEach(last::add);
    }
    return last;
  }

  private void add(ProvingRecord record) {
    add(Proof.Kind.READINGS, record.outdoorReadingsSeen(), record);
    add(Proof.Kind.STALE_RESPONSE, record.staleResponseSeen(), record);
    for (Setting<StormResponse> one : record.stormResponseSeen().or(List.of())) {
      StormResponse response = one.orNull();
      if (response != null) {
        put(Proof.Kind.STORM_RESPONSE, response.unit(), new Seen(record, response));
      }
    }
  }

  private void add(Proof.Kind kind, Setting<List<Setting<String>>> names, ProvingRecord record) {
    names.or(List.of()).forEach(name -> put(kind, name, new Seen(record, null)));
  }

  private void put(Proof.Kind kind, Setting<String> name, Seen seen) {
    name.optional()
        .ifPresent(it -> byKind.computeIfAbsent(kind, any -> new HashMap<>()).put(it, seen));
  }

  /**
   * Whether it says of a unit that its vents closed which has none, as the file says: nobody knows
   * which of the two is right.
   */
  boolean disputesNoVents(Unit unit) {
    return !VentWords.mayMove(unit)
        && (of(Proof.Kind.STORM_RESPONSE, unit) != null
            || of(Proof.Kind.STALE_RESPONSE, unit) != null);
  }

  /** What the record has of a unit; null where it has nothing. */
  @Nullable Seen of(Proof.Kind kind, Unit unit) {
    return byKind.getOrDefault(kind, Map.of()).get(unit.name().or(""));
  }
}
