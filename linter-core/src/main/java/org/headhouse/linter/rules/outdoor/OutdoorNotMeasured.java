package org.headhouse.linter.rules.outdoor;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Outdoor;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.ReadingSource;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.WeatherStation;

/** {@code outdoor.not-measured}. */
public final class OutdoorNotMeasured implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "outdoor.not-measured",
          "The weather station measures every reading that a unit takes from the head unit.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    WeatherStation station = site.weatherStation().orNull();
    if (station == null || !station.isComplete()) {
      return;
    }
    List<Reading> others = new ArrayList<>(List.of(Reading.values()));
    others.removeAll(station.measured());
    if (others.isEmpty()) {
      return;
    }
    for (Unit unit : site.units()) {
      Outdoor outdoor = unit.outdoor().orNull();
      if (outdoor == null) {
        continue;
      }
      for (Reading reading : others) {
        Setting<ReadingSource> source = outdoor.source(reading);
        if (source.is(ReadingSource.HEAD)) {
          report(unit, reading, source, station, context);
        }
      }
    }
  }

  private static void report(
      Unit unit,
      Reading reading,
      Setting<ReadingSource> source,
      WeatherStation station,
      RuleContext context) {
    context.report(
        context
            .finding(
                source.place(),
                new Message(
                    (unit.isHead() ? "the head unit " : "")
                        + unit.called()
                        + " expects "
                        + reading.word()
                        + " from the head unit, but the station does not measure it",
                    "the reading never arrives, and the unit acts as if the line were down",
                    "set the unit and the file to " + reading.word() + ": none, or add the sensor"))
            .related(station.readings().place().region(), "the station's readings are here")
            .fixedBy(
                FixDraft.proposed(
                    "Let " + unit.called() + " do without " + reading.word(),
                    Edit.write(source.place(), ReadingSource.NONE.word()))));
  }
}
