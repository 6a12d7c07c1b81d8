package org.headhouse.linter.report.sheet;

import java.util.List;
import java.util.stream.Collectors;
import org.headhouse.linter.site.Cable;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Equipment;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Link;
import org.headhouse.linter.site.PolledBy;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Supervision;
import org.headhouse.linter.site.WeatherStation;
import org.jspecify.annotations.Nullable;

/**
 * What there is at a site, so that its procedure has the steps that apply and no others.
 *
 * @param head the name of the head unit
 * @param station the unit that the weather station is wired to; empty without a station
 * @param readings what the station measures
 * @param repeaters their names, joined; empty for none
 * @param converters their names, joined; empty for none
 * @param equipment the names of other equipment, joined; empty for none
 * @param asked the names of the equipment that the head unit polls, joined; empty for none
 * @param polled whether supervising software sends over the pair
 * @param bias where the pair is biased, joined; empty for none
 * @param shielded whether the cable has a shield, as far as the file says
 * @param vents whether a unit moves vents, or may do so because the file does not say, or its
 *     record says otherwise
 */
record ProvingScope(
    String head,
    String station,
    List<Reading> readings,
    String repeaters,
    String converters,
    String equipment,
    String asked,
    boolean polled,
    String bias,
    boolean shielded,
    boolean vents) {

  ProvingScope {
    readings = List.copyOf(readings);
  }

  static ProvingScope of(Site site) {
    ChainItem head = site.head();
    WeatherStation station = site.weatherStation().orNull();
    LastSeen last = LastSeen.of(site);
    return new ProvingScope(
        head == null ? "the head unit" : PlainText.name(head),
        station == null ? "" : PlainText.name(station.at().or("the head unit")),
        station == null ? List.of() : station.measured(),
        names(site, ItemKind.REPEATER),
        names(site, ItemKind.CONVERTER),
        names(site, ItemKind.EQUIPMENT),
        asked(site),
        isPolled(site.supervision().orNull()),
        bias(site.line().orNull()),
        isShielded(site.line().orNull()),
        site.units().stream()
            .anyMatch(unit -> VentWords.mayMove(unit) || last.disputesNoVents(unit)));
  }

  private static String names(Site site, ItemKind kind) {
    return site.items().stream()
        .filter(item -> item.kind() == kind)
        .map(PlainText::name)
        .collect(Collectors.joining(", "));
  }

  private static String asked(Site site) {
    return site.items().stream()
        .filter(ProvingScope::isAskedByHead)
        .map(PlainText::name)
        .collect(Collectors.joining(", "));
  }

  private static boolean isAskedByHead(ChainItem item) {
    return item instanceof Equipment equipment
        && equipment.polled().optional().filter(polls -> polls.by().is(PolledBy.HEAD)).isPresent();
  }

  private static boolean isPolled(@Nullable Supervision software) {
    return software != null && !software.link().is(Link.ETHERNET);
  }

  private static String bias(@Nullable LineSettings line) {
    return line == null
        ? ""
        : line.bias().or(List.of()).stream()
            .map(bias -> PlainText.name(bias.at().or("a place that is not known")))
            .distinct()
            .collect(Collectors.joining(", "));
  }

  private static boolean isShielded(@Nullable LineSettings line) {
    Cable cable = line == null ? null : line.cable().orNull();
    return cable == null || !cable.shielded().is(false);
  }

  /** Whether the station measures rain. */
  boolean rain() {
    return readings.contains(Reading.RAIN);
  }

  /** Whether the station has an anemometer. */
  boolean wind() {
    return readings.contains(Reading.WIND_SPEED);
  }

  /** Whether the station has a vane. */
  boolean vane() {
    return readings.contains(Reading.WIND_DIRECTION);
  }

  /** The words for the readings of the station, to be compared with. */
  List<String> readingWords() {
    return readings.stream().map(PlainText::word).toList();
  }
}
