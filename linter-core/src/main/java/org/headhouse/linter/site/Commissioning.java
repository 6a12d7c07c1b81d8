package org.headhouse.linter.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.source.Place;

/**
 * The record of the visit on which the line was proved.
 *
 * @param first what was proved on that visit
 * @param renewed what was proved again after changes
 */
public record Commissioning(ProvingRecord first, Setting<List<Setting<ProvingRecord>>> renewed) {

  /** The key {@code commissioning}. */
  public Place place() {
    return first.place();
  }

  /** The day of the first visit; faulty where its place is still held open. */
  public Setting<LocalDate> date() {
    Setting<RecordDate> written = first.day();
    RecordDate day = written.orNull();
    if (day == null) {
      return written.isMissing()
          ? new Setting.Missing<>(written.place())
          : new Setting.Faulty<>(written.place());
    }
    return day.day() == null
        ? new Setting.Faulty<>(written.place())
        : new Setting.Given<>(day.day(), written.place());
  }

  /** The units whose display showed the outdoor readings, by name. */
  public Setting<List<Setting<String>>> outdoorReadingsSeen() {
    return first.outdoorReadingsSeen();
  }

  /** The first record and those that renew it, in the order of the file, as far as understood. */
  public List<ProvingRecord> records() {
    List<ProvingRecord> records = new ArrayList<>(List.of(first));
    renewed.or(List.of()).forEach(one -> one.optional().ifPresent(records::add));
    return records;
  }

  /** The items where something was measured, by name. */
  public List<Setting<String>> placesMeasured() {
    List<Setting<String>> places = new ArrayList<>();
    for (ProvingRecord proved : records()) {
      List<Setting<MeasuredAt>> elsewhere =
          proved.measured().optional().map(it -> it.elsewhere().or(List.of())).orElse(List.of());
      elsewhere.forEach(one -> one.optional().ifPresent(it -> places.add(it.at())));
    }
    return places;
  }

  /** The units that are listed for their vents, by name. */
  public List<Setting<String>> responsesSeen() {
    List<Setting<String>> names = new ArrayList<>();
    for (ProvingRecord proved : records()) {
      List<Setting<StormResponse>> storms = proved.stormResponseSeen().or(List.of());
      storms.forEach(one -> one.optional().ifPresent(it -> names.add(it.unit())));
      names.addAll(proved.staleResponseSeen().or(List.of()));
    }
    return names;
  }

  /** Wherever an item is referred to by its name. */
  public List<Setting<String>> items() {
    List<Setting<String>> names = new ArrayList<>(placesMeasured());
    names.addAll(responsesSeen());
    records().forEach(proved -> names.addAll(proved.outdoorReadingsSeen().or(List.of())));
    return names;
  }
}
