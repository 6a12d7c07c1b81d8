package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.RelatedLocation;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/**
 * The open results by the items that they are about, so that nobody lands or sets up what is still
 * wrong.
 */
final class Attention {
  /** What is landed or fitted at an item, by the first word of a rule. */
  private static final Set<String> WIRING =
      Set.of(
          "bias",
          "cable",
          "conductors",
          "driver",
          "module",
          "run",
          "segment",
          "signal",
          "stub",
          "termination");

  /** What is set at an item. */
  private static final Set<String> SETTINGS =
      Set.of(
          "equipment",
          "firmware",
          "head",
          "network",
          "outdoor",
          "serial",
          "station",
          "supervision",
          "traffic");

  /** What a card of any unit has of the line as a whole. */
  private static final String SERIAL = "serial";

  /**
   * What the record or the list of zones lacks: neither is landed, and neither is set at a unit.
   */
  private static final Set<String> NEITHER = Set.of("commissioning", "suppression");

  private static final Set<String> NEITHER_RULES =
      Set.of(
          "change.record-kept",
          "supervision.zone-duplicate",
          "supervision.zone-missing",
          "supervision.zone-unknown");

  /** A reading that is off says that something is landed or fitted that the file does not have. */
  private static final String MEASURED = "commissioning.measured-off";

  /** Two items clash: whoever comes to the first of them has to see it as well. */
  private static final Set<String> OF_BOTH =
      Set.of(
          "address.duplicate",
          "bias.several",
          "head.duplicate",
          "name.confusable",
          "name.duplicate",
          "network.duplicate-ip");

  private static final Comparator<Result> MOST_SEVERE_FIRST = Comparator.comparing(Result::level);

  private final Site site;
  private final Map<String, List<ChainItem>> byName = new HashMap<>();
  private final Map<Integer, List<Result>> ofItems = new HashMap<>();
  private final List<Result> ofWholeLine = new ArrayList<>();

  Attention(Site site, List<Result> results) {
    this.site = site;
    for (ChainItem item : site.items()) {
      item.name()
          .optional()
          .ifPresent(name -> byName.computeIfAbsent(name, any -> new ArrayList<>()).add(item));
    }
    results.stream()
        .filter(result -> !result.suppressed() && result.level() != Level.NONE)
        .sorted(MOST_SEVERE_FIRST)
        .forEach(this::sort);
  }

  private void sort(Result result) {
    Set<Integer> items = itemsOf(result);
    if (items.isEmpty()) {
      ofWholeLine.add(result);
    }
    items.forEach(index -> ofItems.computeIfAbsent(index, any -> new ArrayList<>()).add(result));
  }

  private Set<Integer> itemsOf(Result result) {
    Set<Integer> items = new TreeSet<>();
    Stream<String> cases =
        isLandedOrSet(result)
            ? result.identities().stream().map(one -> one.unit()).filter(Objects::nonNull)
            : Stream.of();
    ChainItem here = at(result.location());
    Stream.concat(Stream.ofNullable(result.unit()), cases)
        .flatMap(name -> called(name, here).stream())
        .forEach(item -> items.add(item.index()));
    if (items.isEmpty()) {
      add(here, items);
    }
    // Also where it is about other units, which lack what is wrong with the station.
    if (result.logical().startsWith("weather-station")) {
      site.weatherStation()
          .optional()
          .ifPresent(station -> called(station.at().or(""), null).forEach(at -> add(at, items)));
    }
    if (OF_BOTH.contains(result.rule())) {
      result.related().stream()
          .map(RelatedLocation::location)
          .forEach(location -> add(at(location), items));
    }
    return items;
  }

  /**
   * The items of a name: of several, the one that the result is in, or else all of them.
   *
   * @param here what the result is in, or null
   */
  private List<ChainItem> called(String name, @Nullable ChainItem here) {
    return here != null && here.name().is(name)
        ? List.of(here)
        : byName.getOrDefault(name, List.of());
  }

  private static void add(@Nullable ChainItem item, Set<Integer> items) {
    if (item != null) {
      items.add(item.index());
    }
  }

  /** The item that is written there. */
  private @Nullable ChainItem at(Location location) {
    if (location.file().equals(site.source().path())) {
      for (ChainItem item : site.items()) {
        if (item.place().region().contains(location.region())) {
          return item;
        }
      }
    }
    return null;
  }

  /** What is wrong with how an item is landed; with all of it where it has no card. */
  List<OpenPoint> wiring(ChainItem item) {
    return points(
        of(item)
            .filter(result -> isWiring(result) || !isSettings(result) || !(item instanceof Unit)),
        item);
  }

  /** What is wrong with how a unit is set. */
  List<OpenPoint> settings(Unit unit) {
    return points(
        Stream.concat(
            of(unit).filter(result -> !isWiring(result)),
            ofWholeLine.stream().filter(result -> subject(result).equals(SERIAL))),
        unit);
  }

  /** All that is wrong at an item. */
  List<OpenPoint> all(ChainItem item) {
    return points(ofItems.getOrDefault(item.index(), List.of()).stream(), item);
  }

  /** What is wrong with how the line as a whole is wired. */
  List<OpenPoint> wiringOfWholeLine() {
    return points(ofWholeLine.stream().filter(Attention::isWiring));
  }

  /** All that is about no single item. */
  List<OpenPoint> allOfWholeLine() {
    return points(ofWholeLine.stream());
  }

  /** What somebody who lands or sets up an item has to know. */
  private Stream<Result> of(ChainItem item) {
    return ofItems.getOrDefault(item.index(), List.of()).stream().filter(Attention::isLandedOrSet);
  }

  private static boolean isLandedOrSet(Result result) {
    return isWiring(result)
        || !(NEITHER.contains(subject(result)) || NEITHER_RULES.contains(result.rule()));
  }

  private static boolean isWiring(Result result) {
    return WIRING.contains(subject(result)) || result.rule().equals(MEASURED);
  }

  private static boolean isSettings(Result result) {
    return SETTINGS.contains(subject(result));
  }

  private static String subject(Result result) {
    return result.rule().substring(0, Math.max(0, result.rule().indexOf('.')));
  }

  private static List<OpenPoint> points(Stream<Result> results, ChainItem item) {
    return results.map(result -> OpenPoint.of(result, item)).distinct().toList();
  }

  private static List<OpenPoint> points(Stream<Result> results) {
    return results.map(OpenPoint::of).distinct().toList();
  }
}
