package org.headhouse.linter.change;

import static org.headhouse.linter.change.SettingComparison.in;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.site.Cable;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Polling;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Supervision;
import org.headhouse.linter.site.WeatherStation;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/** Finds what differs between two states of a site. What is not understood is no difference. */
@Internal
public final class SiteDifferences {
  private final List<Difference> found = new ArrayList<>();

  private SiteDifferences() {}

  /** All differences: of the site, of the line, of types, then of the items along the chain. */
  public static List<Difference> between(Site before, Site after) {
    return between(before, after, ItemMatcher.of(before, after));
  }

  static List<Difference> between(Site before, Site after, List<TrackedItem> items) {
    SiteDifferences differences = new SiteDifferences();
    differences.site(before, after);
    differences.line(before.line().orNull(), after.line().orNull());
    differences.found.addAll(TypeFacts.differences(items));
    ItemDifferences ofItems = new ItemDifferences(before, after, ChainStates.of(items));
    items.forEach(item -> differences.found.addAll(ofItems.of(item)));
    return List.copyOf(differences.found);
  }

  private void site(Site before, Site after) {
    site("site", before.id(), after.id());
    site("title", before.title(), after.title());
    site("customer", before.customer(), after.customer());
    site("stage", before.stage(), after.stage());
    station(before.weatherStation().orNull(), after.weatherStation().orNull());
    supervision(before.supervision().orNull(), after.supervision().orNull());
    site(
        "commissioning.date",
        in(before.commissioning().orNull(), record -> record.date()),
        in(after.commissioning().orNull(), record -> record.date()));
  }

  private void station(@Nullable WeatherStation before, @Nullable WeatherStation after) {
    site("weather-station.at", in(before, WeatherStation::at), in(after, WeatherStation::at));
    site(
        "weather-station.readings",
        in(before, WeatherStation::readings),
        in(after, WeatherStation::readings));
    site(
        "weather-station.maximum-age",
        in(before, WeatherStation::maximumAge),
        in(after, WeatherStation::maximumAge));
    site(
        "weather-station.averaging",
        in(before, WeatherStation::averaging),
        in(after, WeatherStation::averaging));
    site(
        "weather-station.close-within",
        in(before, WeatherStation::closeWithin),
        in(after, WeatherStation::closeWithin));
  }

  private void supervision(@Nullable Supervision before, @Nullable Supervision after) {
    site("supervision.link", in(before, Supervision::link), in(after, Supervision::link));
    site("supervision.at", in(before, Supervision::at), in(after, Supervision::at));
    site("supervision.zones", in(before, Supervision::zones), in(after, Supervision::zones));
    polling(
        before == null ? null : before.polling().orNull(),
        after == null ? null : after.polling().orNull());
  }

  private void polling(@Nullable Polling before, @Nullable Polling after) {
    site("supervision.polling.every", in(before, Polling::every), in(after, Polling::every));
    site(
        "supervision.polling.registers",
        in(before, Polling::registers),
        in(after, Polling::registers));
    site("supervision.polling.timeout", in(before, Polling::timeout), in(after, Polling::timeout));
    site("supervision.polling.retries", in(before, Polling::retries), in(after, Polling::retries));
  }

  private void line(@Nullable LineSettings before, @Nullable LineSettings after) {
    if (before != null && after != null) {
      LineChanges.serial(before, after).forEach(this::line);
      Cable cable = before.cable().orNull();
      Cable other = after.cable().orNull();
      line("cable.gauge", in(cable, Cable::gauge), in(other, Cable::gauge));
      line("cable.shielded", in(cable, Cable::shielded), in(other, Cable::shielded));
      line("cable.impedance", in(cable, Cable::impedance), in(other, Cable::impedance));
      line(
          "cable.velocity-factor",
          in(cable, Cable::velocityFactor),
          in(other, Cable::velocityFactor));
      line("cable.capacitance", in(cable, Cable::capacitance), in(other, Cable::capacitance));
      line("maximum-temperature", before.maximumTemperature(), after.maximumTemperature());
      LineChanges.broadcast(before, after).forEach(this::line);
    }
  }

  private void line(String what, Setting<?> from, Setting<?> to) {
    SettingComparison.change(what, from, to).forEach(this::line);
  }

  private void line(ValueChange change) {
    found.add(new Difference.LineSet(change));
  }

  private void site(String what, Setting<?> from, Setting<?> to) {
    SettingComparison.change(what, from, to)
        .forEach(change -> found.add(new Difference.SiteSet(change)));
  }
}
