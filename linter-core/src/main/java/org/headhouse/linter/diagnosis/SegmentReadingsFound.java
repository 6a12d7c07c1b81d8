package org.headhouse.linter.diagnosis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.fault.Measurement;
import org.headhouse.linter.fault.Measurement.Quantity;
import org.headhouse.linter.fault.MeterReading;
import org.headhouse.linter.figures.LatestReadings;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.MeasuringPlace;
import org.headhouse.linter.figures.MeasuringPlaces;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.FoundReading;
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Toward;
import org.headhouse.linter.site.Voltage;
import org.jspecify.annotations.Nullable;

/** The readings of a site, put to the segments that they were taken in. */
final class SegmentReadingsFound {
  private final Site site;
  private final MeasuringPlaces places;
  private final Map<SegmentLine, List<MeterReading>> bySegment = new HashMap<>();
  private final List<String> notUsed = new ArrayList<>();
  private @Nullable ChainItem firstSilent;
  private boolean any;

  /** Those as found; where there are none, those of the latest record. */
  static SegmentReadingsFound of(Site site, LineFigures figures, List<FoundReading> found) {
    SegmentReadingsFound readings = new SegmentReadingsFound(site, figures);
    Commissioning record = site.commissioning().orNull();
    if (!found.isEmpty()) {
      found.forEach(readings::add);
    } else if (record != null) {
      readings.add(LatestReadings.of(record, site, figures));
    }
    return readings;
  }

  private SegmentReadingsFound(Site site, LineFigures figures) {
    this.site = site;
    this.places = new MeasuringPlaces(site, figures);
  }

  boolean any() {
    return any;
  }

  List<MeterReading> of(SegmentLine line) {
    return bySegment.getOrDefault(line, List.of());
  }

  /** The first item that does not answer; null where nobody says. */
  @Nullable ChainItem firstSilent() {
    return firstSilent;
  }

  List<String> notUsed() {
    return notUsed;
  }

  private void add(LatestReadings latest) {
    for (var taken : latest.pairOhms()) {
      ohms(taken.place(), Quantity.PAIR_RESISTANCE, taken.reading());
    }
    for (var taken : latest.idleVolts()) {
      volts(taken.place(), Quantity.IDLE_VOLTAGE, taken.reading());
    }
  }

  private void add(FoundReading found) {
    if (found.firstSilent().isGiven()) {
      silent(found.firstSilent().or(""));
      return;
    }
    MeasuringPlace place = places.of(found.at(), found.side());
    String at = found.at().orNull();
    if (place == null) {
      if (at != null) {
        notUsed.add("\"" + at + "\" has no such terminals: correct its name, or the side");
      }
      return;
    }
    Toward toward = found.toward().orNull();
    if (toward != null && !found.pairResistance().isGiven()) {
      notUsed.add(
          "the reading at "
              + place.called()
              + " says toward, which goes with pair-resistance only");
    }
    ohms(place, pair(place, toward), found.pairResistance());
    ohms(place, Quantity.LOOP_RESISTANCE, found.loopResistance());
    if (toward == null) {
      volts(place, Quantity.IDLE_VOLTAGE, found.idleVoltage());
      volts(place, Quantity.D1_VOLTAGE, found.d1Voltage());
      volts(place, Quantity.D0_VOLTAGE, found.d0Voltage());
    }
  }

  /** The head unit is towards the start of the chain, but for what is connected before it. */
  private Quantity pair(MeasuringPlace place, @Nullable Toward toward) {
    if (toward == null) {
      return Quantity.PAIR_RESISTANCE;
    }
    return (toward == Toward.HEAD) == isAfterHead(site, place.item())
        ? Quantity.RESISTANCE_TOWARD_HEAD
        : Quantity.RESISTANCE_TOWARD_END;
  }

  static boolean isAfterHead(Site site, ChainItem item) {
    ChainItem head = site.head();
    return head == null || item.index() >= head.index();
  }

  private void silent(String name) {
    any = true;
    ChainItem named = null;
    for (ChainItem item : site.items()) {
      named = named == null && item.name().is(name) ? item : named;
    }
    if (named == null) {
      notUsed.add(
          "\"" + name + "\" is not on the chain: correct the name of the first silent unit");
    } else if (site.head() == null) {
      notUsed.add("where the answers end says nothing while the head unit is unknown");
    } else if (firstSilent == null || named.index() < firstSilent.index()) {
      firstSilent = named;
    }
  }

  private void ohms(MeasuringPlace place, Quantity quantity, Setting<Resistance> reading) {
    Resistance value = reading.orNull();
    if (value != null) {
      double unit = value.written().endsWith("kohm") ? 1e3 : 1;
      add(place, quantity, value.ohms(), LastDigit.of(value.written()) * unit);
    }
  }

  private void volts(MeasuringPlace place, Quantity quantity, Setting<Voltage> reading) {
    Voltage value = reading.orNull();
    if (value != null) {
      double unit = value.written().endsWith("mV") ? 1e-3 : 1;
      add(place, quantity, value.volts(), LastDigit.of(value.written()) * unit);
    }
  }

  private void add(MeasuringPlace place, Quantity quantity, double value, double digit) {
    any = true;
    bySegment
        .computeIfAbsent(place.line(), line -> new ArrayList<>())
        .add(new MeterReading(new Measurement(quantity, place.index()), value, digit));
  }
}
