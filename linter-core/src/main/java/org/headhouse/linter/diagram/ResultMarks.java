package org.headhouse.linter.diagram;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/** The faulty places of a line, numbered; suppressed results are left out. */
final class ResultMarks {
  private static final Set<String> KEYS_OF_THE_CABLE =
      Set.of("cable-to-next", "run-to-next", "surge-protection-to-next");

  private final Site site;
  private final int stationAt;
  private final List<Result> wholeLineResults = new ArrayList<>();
  private final List<Result> stationResults = new ArrayList<>();
  private final Map<Integer, List<Result>> itemResults = new HashMap<>();
  private final Map<Integer, List<Result>> cableResults = new HashMap<>();
  private final Map<Integer, Mark> items = new HashMap<>();
  private final Map<Integer, Mark> cables = new HashMap<>();
  private final List<Mark> all = new ArrayList<>();
  private final @Nullable Mark wholeLine;
  private @Nullable Mark station;

  /**
   * @param stationAt the place in the chain of the unit with the weather station, or -1
   */
  ResultMarks(Site site, List<Result> results, int stationAt) {
    this.site = site;
    this.stationAt = stationAt;
    results.stream()
        .filter(result -> !result.suppressed() && result.level() != Level.NONE)
        .forEach(this::sort);
    wholeLine = next("the line as a whole", -1, wholeLineResults);
    for (ChainItem item : site.items()) {
      number(item);
    }
  }

  private void sort(Result result) {
    ChainItem item = itemOf(result);
    boolean ofStation = result.logical().startsWith("weather-station");
    if (ofStation && stationAt >= 0) {
      stationResults.add(result);
    } else if (item == null) {
      wholeLineResults.add(result);
    } else {
      String key = result.logical().substring(result.logical().lastIndexOf('/') + 1);
      boolean ofCable = KEYS_OF_THE_CABLE.contains(key) && item.index() < site.items().size() - 1;
      (ofCable ? cableResults : itemResults)
          .computeIfAbsent(item.index(), index -> new ArrayList<>())
          .add(result);
    }
  }

  /** The item that the result's place is in, or that the result names. */
  private @Nullable ChainItem itemOf(Result result) {
    boolean here = result.location().file().equals(site.source().path());
    for (ChainItem item : site.items()) {
      if (here && item.place().region().contains(result.location().region())) {
        return item;
      }
    }
    String name = result.unit();
    for (ChainItem item : site.items()) {
      if (name != null && item.name().is(name)) {
        return item;
      }
    }
    return null;
  }

  private void number(ChainItem item) {
    String name = Names.plain(item);
    Mark own = next(name, item.index(), itemResults.getOrDefault(item.index(), List.of()));
    if (own != null) {
      items.put(item.index(), own);
    }
    if (item.index() == stationAt) {
      station = next("weather station", stationAt, stationResults);
    }
    Mark cable =
        next(
            "cable after " + name,
            item.index(),
            cableResults.getOrDefault(item.index(), List.of()));
    if (cable != null) {
      cables.put(item.index(), cable);
    }
  }

  private @Nullable Mark next(String place, int item, List<Result> results) {
    if (results.isEmpty()) {
      return null;
    }
    Mark mark = new Mark(all.size() + 1, item, place, results);
    all.add(mark);
    return mark;
  }

  /** The mark of results that are about no single place of the chain. */
  @Nullable Mark ofWholeLine() {
    return wholeLine;
  }

  @Nullable Mark ofStation() {
    return station;
  }

  @Nullable Mark of(ChainItem item) {
    return items.get(item.index());
  }

  /** The mark of the cable behind an item. */
  @Nullable Mark ofCableBehind(ChainItem item) {
    return cables.get(item.index());
  }

  /** By number. */
  List<Mark> all() {
    return Collections.unmodifiableList(all);
  }

  /** The place in the chain of the unit that the weather station is wired to, or -1. */
  static int stationAt(Site site) {
    Unit unit =
        site.weatherStation()
            .optional()
            .map(station -> site.unit(station.at().orNull()))
            .orElse(null);
    return unit == null ? -1 : unit.index();
  }
}
