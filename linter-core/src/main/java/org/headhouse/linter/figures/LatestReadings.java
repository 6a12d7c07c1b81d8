package org.headhouse.linter.figures;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.Measured;
import org.headhouse.linter.site.MeasuredAt;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Voltage;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * What was measured last at each place. What was measured anew on a later visit is history: it is
 * that of the line before a change.
 *
 * @param pairOhms one or more of each place
 * @param idleVolts likewise
 */
@Internal
public record LatestReadings(List<Taken<Resistance>> pairOhms, List<Taken<Voltage>> idleVolts) {

  public LatestReadings {
    pairOhms = List.copyOf(pairOhms);
    idleVolts = List.copyOf(idleVolts);
  }

  /** A reading and where it was taken. */
  public record Taken<T>(MeasuringPlace place, Setting<T> reading) {}

  /** Those of the records of a site, the earliest visit first. */
  public static LatestReadings of(Commissioning commissioning, Site site, LineFigures figures) {
    MeasuringPlaces places = new MeasuringPlaces(site, figures);
    Latest<Resistance> ohms = new Latest<>();
    Latest<Voltage> volts = new Latest<>();
    for (ProvingRecord visit : byDay(commissioning.records())) {
      ohms.nextVisit();
      volts.nextVisit();
      Measured measured = visit.measured().orNull();
      if (measured != null) {
        ohms.add(places.ofHead(), measured.pairResistance());
        volts.add(places.ofHead(), measured.idleVoltage());
        for (Setting<MeasuredAt> one : measured.elsewhere().or(List.of())) {
          MeasuredAt elsewhere = one.orNull();
          if (elsewhere != null) {
            MeasuringPlace place = places.of(elsewhere);
            ohms.add(place, elsewhere.pairResistance());
            volts.add(place, elsewhere.idleVoltage());
          }
        }
      }
    }
    return new LatestReadings(ohms.all(), volts.all());
  }

  /** A visit whose day is not known stands last, so that it is judged. */
  private static List<ProvingRecord> byDay(List<ProvingRecord> records) {
    List<ProvingRecord> sorted = new ArrayList<>(records);
    sorted.sort(Comparator.comparing(LatestReadings::day));
    return sorted;
  }

  private static LocalDate day(ProvingRecord visit) {
    LocalDate day = visit.dayOrNull();
    return day == null ? LocalDate.MAX : day;
  }

  /** The readings of one quantity, visit by visit. */
  private static final class Latest<T> {
    private final Map<MeasuringPlace, List<Taken<T>>> byPlace = new LinkedHashMap<>();
    private final Map<MeasuringPlace, Integer> visitOf = new HashMap<>();
    private int visit;

    void nextVisit() {
      visit++;
    }

    void add(@Nullable MeasuringPlace place, Setting<T> reading) {
      if (place != null && reading.isGiven()) {
        Integer before = visitOf.put(place, visit);
        if (before == null || before != visit) {
          byPlace.put(place, new ArrayList<>());
        }
        byPlace.computeIfAbsent(place, it -> new ArrayList<>()).add(new Taken<>(place, reading));
      }
    }

    List<Taken<T>> all() {
      List<Taken<T>> all = new ArrayList<>();
      byPlace.values().forEach(all::addAll);
      return all;
    }
  }
}
