package org.headhouse.linter.site;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.source.SpellingSuggester;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/** One customer's line, as one file defines it. */
public final class Site {
  private final SourceText source;
  private final Setting<String> id;
  private final Setting<String> title;
  private final Setting<String> customer;
  private final Setting<Stage> stage;
  private final Setting<WeatherStation> weatherStation;
  private final Setting<LineSettings> line;
  private final Setting<List<ChainItem>> chain;
  private final Setting<Supervision> supervision;
  private final Setting<Commissioning> commissioning;
  private final Setting<List<Setting<FoundReading>>> asFound;
  private final List<SuppressionEntry> suppressions;
  private final List<ChainItem> items;
  private final List<Unit> units;
  private final List<Segment> segments;
  private final @Nullable Unit head;

  /**
   * @param chain its items; an item that is not understood stands as a unit of which all settings
   *     are faulty
   */
  @Internal
  public Site(
      SourceText source,
      Setting<String> id,
      Setting<String> title,
      Setting<String> customer,
      Setting<Stage> stage,
      Setting<WeatherStation> weatherStation,
      Setting<LineSettings> line,
      Setting<List<ChainItem>> chain,
      Setting<Supervision> supervision,
      Setting<Commissioning> commissioning,
      Setting<List<Setting<FoundReading>>> asFound,
      List<SuppressionEntry> suppressions) {
    this.source = source;
    this.id = id;
    this.title = title;
    this.customer = customer;
    this.stage = stage;
    this.weatherStation = weatherStation;
    this.line = line;
    this.chain = chain;
    this.supervision = supervision;
    this.commissioning = commissioning;
    this.asFound = asFound;
    this.suppressions = List.copyOf(suppressions);
    this.items = List.copyOf(chain.or(List.of()));
    this.units = units(items);
    this.segments = segments(items);
    this.head = head(units);
  }

  private static List<Unit> units(List<ChainItem> items) {
    List<Unit> units = new ArrayList<>(items.size());
    for (ChainItem item : items) {
      if (item instanceof Unit unit) {
        units.add(unit);
      }
    }
    return Collections.unmodifiableList(units);
  }

  private static List<Segment> segments(List<ChainItem> items) {
    List<Segment> segments = new ArrayList<>();
    List<ChainItem> open = new ArrayList<>();
    for (ChainItem item : items) {
      open.add(item);
      if (item instanceof Repeater && open.size() > 1) {
        segments.add(new Segment(open));
        open = new ArrayList<>(List.of(item));
      }
    }
    if (open.size() > 1 || (segments.isEmpty() && !open.isEmpty())) {
      segments.add(new Segment(open));
    }
    return List.copyOf(segments);
  }

  public SourceText source() {
    return source;
  }

  public Setting<String> id() {
    return id;
  }

  public Setting<String> title() {
    return title;
  }

  public Setting<String> customer() {
    return customer;
  }

  public Setting<Stage> stage() {
    return stage;
  }

  /** Whether nothing of the line is in operation yet, as far as the file says. */
  public boolean isPlanned() {
    return stage.is(Stage.PLANNED) && !wasCommissioned();
  }

  /**
   * Whether nothing is set on site, so that the file is all there is: it says planned, and nothing
   * in it shows that somebody was at the line. A record of commissioning shows it also where it is
   * not understood, and a serial number is read off a device. A draft with open points may be that
   * of a line that works.
   */
  public boolean isUntouched() {
    return stage.is(Stage.PLANNED)
        && commissioning.isMissing()
        && asFound.isMissing()
        && items.stream().allMatch(item -> item.device().serialNumber().isMissing())
        && !OpenMark.isIn(source.text());
  }

  /**
   * Whether the line is or was in operation, as far as the file says: its stage is commissioned, or
   * it keeps the dated record of a visit, as a site does that is planned again for a change.
   */
  public boolean wasCommissioned() {
    Commissioning record = commissioning.orNull();
    return stage.is(Stage.COMMISSIONED) || (record != null && record.date().isGiven());
  }

  public Setting<WeatherStation> weatherStation() {
    return weatherStation;
  }

  public Setting<LineSettings> line() {
    return line;
  }

  /** The key {@code chain} as it is written; {@link #items()} are the items themselves. */
  public Setting<List<ChainItem>> chain() {
    return chain;
  }

  public Setting<Supervision> supervision() {
    return supervision;
  }

  public Setting<Commissioning> commissioning() {
    return commissioning;
  }

  /** What was measured while the line misbehaved. */
  public Setting<List<Setting<FoundReading>>> asFound() {
    return asFound;
  }

  /** The same, as far as it is understood. */
  public List<FoundReading> readingsAsFound() {
    List<FoundReading> readings = new ArrayList<>();
    asFound.or(List.of()).forEach(one -> one.optional().ifPresent(readings::add));
    return readings;
  }

  public List<SuppressionEntry> suppressions() {
    return suppressions;
  }

  /** The chain in wiring order; empty where it is missing or not understood. */
  public List<ChainItem> items() {
    return items;
  }

  /** The units of the chain in wiring order. */
  public List<Unit> units() {
    return units;
  }

  /** The electrically separate stretches of the chain, from the head unit on. */
  public List<Segment> segments() {
    return segments;
  }

  /** The galvanically separate stretches of the chain. */
  public List<GalvanicSection> galvanicSections() {
    return GalvanicSection.of(segments);
  }

  /** The head unit, or null where there is not exactly one. */
  public @Nullable Unit head() {
    return head;
  }

  private static @Nullable Unit head(List<Unit> units) {
    Unit head = null;
    for (Unit unit : units) {
      if (unit.isHead()) {
        if (head != null) {
          return null;
        }
        head = unit;
      }
    }
    return head;
  }

  /**
   * Whether a unit moves vents. Once the line is commissioned, one that says nothing of vents
   * counts as moving some: leaving them out is no way round a proof.
   */
  public boolean movesVents(Unit unit) {
    Vents vents = unit.vents().orNull();
    return vents == null
        ? unit.vents().isMissing() && stage.is(Stage.COMMISSIONED)
        : vents != Vents.NONE;
  }

  /** Whether the weather station is wired to a unit. */
  public boolean hasStation(Unit unit) {
    WeatherStation station = weatherStation.orNull();
    String name = unit.name().orNull();
    return station != null && name != null && station.at().is(name);
  }

  /** Where the file refers to an item of the chain by its name. */
  public List<Place> references(String name) {
    List<Setting<String>> references = new ArrayList<>();
    weatherStation.optional().ifPresent(station -> references.add(station.at()));
    line.optional()
        .ifPresent(
            settings -> settings.bias().or(List.of()).forEach(bias -> references.add(bias.at())));
    supervision
        .optional()
        .ifPresent(
            software -> {
              references.add(software.at());
              references.addAll(software.zones().or(List.of()));
            });
    commissioning.optional().ifPresent(record -> references.addAll(record.items()));
    for (FoundReading found : readingsAsFound()) {
      references.add(found.at());
      references.add(found.firstSilent());
    }
    suppressions.forEach(entry -> references.add(entry.unit()));
    return references.stream().filter(reference -> reference.is(name)).map(Setting::place).toList();
  }

  /**
   * The addresses of the equipment on the pair, which no unit can have; without 1, which equipment
   * has to leave to the head unit.
   */
  public Set<Integer> addressesOfEquipment() {
    Set<Integer> addresses = new TreeSet<>();
    for (ChainItem item : items) {
      if (item instanceof Equipment equipment && !equipment.address().is(BusAddress.HEAD)) {
        equipment.address().optional().ifPresent(addresses::add);
      }
    }
    return addresses;
  }

  /** The first unit of a name, or null where no unit has it. */
  public @Nullable Unit unit(@Nullable String name) {
    for (Unit unit : units) {
      if (name != null && Objects.equals(unit.name().orNull(), name)) {
        return unit;
      }
    }
    return null;
  }

  /**
   * The units that names which no unit has are nearly spelt like. A misspelt name is reported where
   * it stands, so that its unit is not missing from the list.
   *
   * @param listed names that are taken for names of units
   */
  public Set<String> misspelt(Collection<String> listed) {
    Set<String> names = new LinkedHashSet<>();
    units.forEach(unit -> unit.name().optional().ifPresent(names::add));
    SpellingSuggester nearest = new SpellingSuggester(names);
    Set<String> misspelt = new HashSet<>();
    for (String name : listed) {
      if (!names.contains(name)) {
        nearest.suggest(name).ifPresent(misspelt::add);
      }
    }
    return misspelt;
  }

  /**
   * Whether every item's name is understood and no two are equal, so that a name that is not here
   * names nothing: of two equal names one is meant to be another.
   */
  public boolean allNamesKnown() {
    Set<String> names = new HashSet<>();
    for (ChainItem item : items) {
      String name = item.name().orNull();
      if (name == null || !names.add(name)) {
        return false;
      }
    }
    return chain.isGiven();
  }
}
