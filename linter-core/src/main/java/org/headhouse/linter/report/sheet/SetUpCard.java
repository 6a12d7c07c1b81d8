package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.headhouse.linter.site.Network;
import org.headhouse.linter.site.Outdoor;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.ReadingSource;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/**
 * The settings to make at one unit.
 *
 * @param number its place in the chain, from 1
 * @param about the site and the type of the unit
 * @param settings each with a box to tick
 * @param readings the source of each outdoor reading, each with a box to tick
 * @param advice what to know before
 * @param failing what to do where the unit fails
 * @param open what is still wrong here
 */
record SetUpCard(
    int number,
    String name,
    String about,
    List<Fact> settings,
    List<Fact> readings,
    List<String> advice,
    List<String> failing,
    List<OpenPoint> open) {

  SetUpCard {
    settings = List.copyOf(settings);
    readings = List.copyOf(readings);
    advice = List.copyOf(advice);
    failing = List.copyOf(failing);
    open = List.copyOf(open);
  }

  static SetUpCard of(Unit unit, SiteFacts facts, Attention attention) {
    Site site = facts.site();
    return new SetUpCard(
        unit.index() + 1,
        PlainText.name(unit),
        about(unit, site),
        settings(unit, site),
        readings(unit),
        advice(unit, site),
        FailureAdvice.of(unit, facts.bypasses(), BiasFeed.isAt(unit, site)),
        attention.settings(unit));
  }

  /** Nobody can set it. */
  private static String closeTime(Unit unit) {
    return "Take the time by a watch from a reading over the limit until its slowest vent is shut"
        + (unit.closeTime().isGiven()
            ? "; the file has " + VentWords.closeTime(unit) + "."
            : ", and write it into the file as close-time.");
  }

  private static String about(Unit unit, Site site) {
    String type = UnitWords.type(unit);
    return SheetHead.title(site) + (type.isEmpty() ? "" : ", " + type);
  }

  private static List<Fact> settings(Unit unit, Site site) {
    List<Fact> settings = new ArrayList<>();
    settings.add(new Fact("Name", PlainText.name(unit)));
    settings.add(new Fact("Role", PlainText.word(unit.role())));
    settings.add(new Fact("Address", UnitWords.address(unit)));
    settings.add(new Fact("Line", SerialWords.of(site.line().orNull())));
    vents(unit, settings);
    Network network = unit.network().orNull();
    if (network != null) {
      settings.add(
          new Fact(
              "Ethernet",
              text(network.ip())
                  + (network.gateway().isGiven() ? ", gateway " + text(network.gateway()) : "")));
    }
    unit.firmware()
        .optional()
        .ifPresent(version -> settings.add(new Fact("Firmware", PlainText.name(version))));
    return settings;
  }

  /** Where the file does not say, the unit may have vents. */
  private static void vents(Unit unit, List<Fact> settings) {
    settings.add(new Fact("Vents", VentWords.vents(unit)));
    if (VentWords.mayMove(unit)) {
      settings.add(new Fact("On stale readings", VentWords.fallback(unit)));
      settings.add(new Fact("Stale after", VentWords.staleAfter(unit)));
    }
  }

  private static String text(Setting<String> setting) {
    return PlainText.name(setting.or(PlainText.NOT_WRITTEN));
  }

  private static List<Fact> readings(Unit unit) {
    Outdoor outdoor = unit.outdoor().orNull();
    List<Fact> readings = new ArrayList<>();
    if (outdoor != null) {
      for (Reading reading : Reading.values()) {
        Setting<ReadingSource> source = outdoor.source(reading);
        if (!source.isMissing()) {
          readings.add(
              new Fact(
                  PlainText.word(reading),
                  source.optional().map(SetUpCard::source).orElse(PlainText.NOT_WRITTEN)));
        }
      }
    }
    return readings;
  }

  private static String source(ReadingSource source) {
    return switch (source) {
      case LOCAL -> "own sensor";
      case HEAD -> "head unit";
      case NONE -> "none";
    };
  }

  private static List<String> advice(Unit unit, Site site) {
    List<String> advice = new ArrayList<>();
    Optional<Integer> delivered = unit.type().defaultAddress().optional();
    advice.add(
        "Set the address before the pair is connected."
            + delivered
                .filter(address -> !unit.address().is(address))
                .map(address -> " Delivered with address " + address + ".")
                .orElse(""));
    if (VentWords.mayMove(unit)) {
      advice.add(closeTime(unit));
    }
    if (site.hasStation(unit)) {
      advice.add("The weather station is wired to this unit.");
    }
    return advice;
  }
}
