package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.site.Cable;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Quantity;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.WeatherStation;
import org.jspecify.annotations.Nullable;

/**
 * The head of a sheet, which identifies it.
 *
 * @param title what people call the site
 * @param origin the file it was made from, the date, and the rule set
 * @param line the line in short
 */
record SheetHead(String title, List<Fact> origin, List<Fact> line) {

  static SheetHead of(SiteFacts facts, SheetSettings settings) {
    Site site = facts.site();
    String id = PlainText.name(site.id().or(PlainText.NOT_WRITTEN));
    List<Fact> origin = new ArrayList<>();
    origin.add(new Fact("Site", id));
    site.customer()
        .optional()
        .ifPresent(customer -> origin.add(new Fact("Customer", PlainText.name(customer))));
    origin.add(new Fact("Stage", PlainText.word(site.stage())));
    origin.add(new Fact("Made on", settings.date().toString()));
    origin.add(new Fact("File", PlainText.sentence(site.source().path())));
    origin.add(facts.provenance().state());
    origin.add(new Fact("Rule set", String.valueOf(settings.ruleSet())));
    return new SheetHead(title(site), origin, line(facts, settings));
  }

  /** The title, else the id, else the name of the file. */
  static String title(Site site) {
    return PlainText.name(site.title().or(site.id().or(site.source().path())));
  }

  /** The same, never cut to the room of a heading. */
  static String wholeTitle(Site site) {
    return PlainText.sentence(site.title().or(site.id().or(site.source().path())));
  }

  private static List<Fact> line(SiteFacts facts, SheetSettings settings) {
    Site site = facts.site();
    List<Fact> line = new ArrayList<>();
    line.add(new Fact("Units on the chain", String.valueOf(site.units().size())));
    line.add(new Fact("Segments", String.valueOf(site.segments().size())));
    Double metres = totalMetres(facts.figures().segments());
    line.add(
        new Fact(
            "Total cable",
            metres == null ? "a length is missing" : settings.measure().length(metres)));
    line.add(new Fact("Cable", cable(site)));
    line.add(new Fact("Serial settings", SerialWords.of(site.line().orNull())));
    line.add(new Fact("Weather station", station(site)));
    return line;
  }

  private static @Nullable Double totalMetres(List<SegmentLine> segments) {
    double sum = 0;
    for (SegmentLine segment : segments) {
      Double metres = segment.lengthMetres();
      if (metres == null) {
        return null;
      }
      sum += metres;
    }
    return sum;
  }

  private static String cable(Site site) {
    LineSettings line = site.line().orNull();
    Cable cable = line == null ? null : line.cable().orNull();
    if (cable == null) {
      return PlainText.NOT_WRITTEN;
    }
    return written(cable.gauge())
        + (cable.shielded().is(true) ? ", shielded" : ", without shield")
        + ", impedance "
        + written(cable.impedance());
  }

  private static String written(Setting<? extends Quantity> setting) {
    return setting.optional().map(Quantity::written).orElse(PlainText.NOT_WRITTEN);
  }

  private static String station(Site site) {
    WeatherStation station = site.weatherStation().orNull();
    if (station == null) {
      return PlainText.NOT_WRITTEN;
    }
    String readings =
        station.readings().or(List.of()).stream()
            .flatMap(reading -> reading.optional().stream())
            .map(PlainText::word)
            .collect(Collectors.joining(", "));
    return "at " + PlainText.name(station.at().or(PlainText.NOT_WRITTEN)) + ": " + readings;
  }
}
