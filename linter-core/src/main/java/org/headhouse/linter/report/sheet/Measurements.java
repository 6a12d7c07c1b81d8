package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.figures.LatestReadings;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.MeasuringPlace;
import org.headhouse.linter.figures.ReadingUnit;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SegmentNetwork;
import org.headhouse.linter.figures.SegmentReadings;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.line.MeterAccuracy;
import org.headhouse.linter.line.PairMeasurement;
import org.headhouse.linter.line.PairResistance;
import org.headhouse.linter.line.SegmentFigures;
import org.headhouse.linter.line.SegmentSpread;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.Quantity;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/**
 * What is measured of one segment, at the head unit or the side out of its repeater and far off.
 */
final class Measurements {
  private static final String OFF = "Power off, supplies isolated and locked off";

  /** The state in which an idle line is measured. */
  static final String ON = "Power on, nobody sends";

  /** What is added where the pair is measured without its terminators. */
  static final String TERMINATORS_OFF = ", both terminators off";

  private static final String PAIR = "resistance between D1 and D0";
  private static final String AFTERWARDS =
      "Afterwards remove the short and put the terminators back.";

  private static final String OTHER_END = " Measure at the other end as well.";
  private static final String WITHOUT_TERMINATORS =
      " Measure at both ends, and with the terminators off, the far end open and shorted.";
  private static final String NO_BIAS =
      "Not judged. If it reads over "
          + ReadingUnit.MILLIVOLT.atLeast(SegmentReadings.UNHELD_VOLTS)
          + " either way, a bias is fitted that the file does not have.";

  private final SegmentLine line;
  private final SegmentReadings readings;
  private final MeterAccuracy ohmmeter;
  private final @Nullable SegmentNetwork network;
  private final List<MeasuringPlace> places;
  private final Map<MeasuringPlace, String> lastOhms;
  private final Map<MeasuringPlace, String> lastVolts;

  private Measurements(
      SegmentLine line,
      MeterAccuracy ohmmeter,
      Map<MeasuringPlace, String> lastOhms,
      Map<MeasuringPlace, String> lastVolts) {
    this.lastOhms = lastOhms;
    this.lastVolts = lastVolts;
    this.line = line;
    this.readings = line.readings();
    this.ohmmeter = ohmmeter;
    this.network = line.hasFaultThatDistortsFigures() ? null : line.network();
    this.places = line.measuringPlaces();
  }

  /** All resistances, then all voltages: power comes back once. */
  static List<Measurement> of(Site site, LineFigures figures, MeterAccuracy ohmmeter) {
    Map<MeasuringPlace, String> ohms = new HashMap<>();
    Map<MeasuringPlace, String> volts = new HashMap<>();
    Commissioning record = site.commissioning().orNull();
    if (record != null) {
      LatestReadings latest = LatestReadings.of(record, site, figures);
      latest.pairOhms().forEach(taken -> put(taken, ohms));
      latest.idleVolts().forEach(taken -> put(taken, volts));
    }
    List<Measurements> each =
        figures.segments().stream()
            .map(segment -> new Measurements(segment, ohmmeter, ohms, volts))
            .toList();
    List<Measurement> all = new ArrayList<>();
    each.forEach(segment -> all.addAll(segment.resistances()));
    each.forEach(segment -> all.addAll(segment.voltages()));
    return all;
  }

  private static void put(
      LatestReadings.Taken<? extends Quantity> taken, Map<MeasuringPlace, String> last) {
    taken
        .reading()
        .optional()
        .ifPresent(
            value ->
                last.merge(
                    taken.place(),
                    PlainText.name(value.written()),
                    (one, other) -> one + ", " + other));
  }

  private List<Measurement> resistances() {
    if (network == null || !line.conductsSteadily()) {
      String why = network == null ? missing() : "not judged: no terminator passes direct current";
      return places.stream()
          .map(place -> row(OFF, PAIR, place, why, "", last(lastOhms, place), ""))
          .toList();
    }
    SegmentSpread spread = network.spreadOfReadings();
    List<PairMeasurement> each =
        places.stream()
            .map(place -> PairMeasurement.asWritten(spread, ohmmeter, place.index()))
            .toList();
    List<BlindSpots> spots = each.stream().map(one -> BlindSpots.of(line, one)).toList();
    boolean together =
        spots.stream().reduce(BlindSpots::and).stream().allMatch(BlindSpots::isEmpty);
    List<Measurement> rows = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      MeasuringPlace place = places.get(i);
      rows.add(
          row(
              OFF,
              PAIR,
              place,
              ohms(PairResistance.at(network.circuit(), place.index())),
              ReadingUnit.OHM.range(each.get(i).accepted()),
              last(lastOhms, place),
              spots.get(i).isEmpty()
                  ? ""
                  : spots.get(i).words() + (together ? OTHER_END : WITHOUT_TERMINATORS)));
    }
    if (!together) {
      rows.addAll(withoutTerminators(network, places.get(0), places.get(places.size() - 1)));
    }
    return rows;
  }

  /** They show what the readings of the line as it is cannot. */
  private List<Measurement> withoutTerminators(
      SegmentNetwork known, MeasuringPlace near, MeasuringPlace far) {
    SegmentSpread spread = known.spreadOfReadings();
    SegmentSpread written = SegmentSpread.none(known.circuit());
    PairMeasurement open = PairMeasurement.open(spread, ohmmeter, near.index());
    PairMeasurement loop = PairMeasurement.shorted(spread, ohmmeter, near.index(), far.index());
    return List.of(
        row(
            OFF,
            PAIR + TERMINATORS_OFF,
            near,
            ohms(PairMeasurement.open(written, ohmmeter, near.index()).range()),
            ReadingUnit.OHM.range(open.accepted()),
            "",
            BlindSpots.withoutTerminators(line, open).words()),
        row(
            OFF,
            PAIR + TERMINATORS_OFF + ", the pair shorted at " + name(far),
            near,
            ohms(PairMeasurement.shorted(written, ohmmeter, near.index(), far.index()).range()),
            ReadingUnit.OHM.range(loop.accepted()),
            "",
            (BlindSpots.withoutTerminators(line, loop).words() + " " + AFTERWARDS).strip()));
  }

  private List<Measurement> voltages() {
    return places.stream().map(this::voltage).toList();
  }

  private Measurement voltage(MeasuringPlace place) {
    String what = "voltage of D1 against D0, red lead on D1";
    if (!readings.isHeld()) {
      return row(ON, what, place, "not defined: no bias", "", last(lastVolts, place), NO_BIAS);
    }
    SegmentFigures figures = network == null ? null : network.figures();
    List<Double> volts = figures == null ? null : figures.idleVolts();
    String computed =
        volts == null
            ? network == null ? missing() : "not defined: no bias"
            : Shown.volts(volts.get(place.index()));
    return row(
        ON,
        what,
        place,
        computed,
        line.hasFaultThatDistortsFigures()
            ? ""
            : ReadingUnit.MILLIVOLT.range(readings.idleVolts(place.index())),
        last(lastVolts, place),
        "");
  }

  private static Measurement row(
      String state,
      String what,
      MeasuringPlace place,
      String computed,
      String acceptable,
      String last,
      String limits) {
    return new Measurement(state, what, name(place), computed, acceptable, last, limits);
  }

  private static String last(Map<MeasuringPlace, String> values, MeasuringPlace place) {
    return values.getOrDefault(place, "");
  }

  private static String ohms(PairResistance range) {
    String low = Shown.ohms(range.lowOhms());
    String high = Shown.ohms(range.highOhms());
    return low.equals(high) ? low : low + " to " + high;
  }

  private String missing() {
    return line.hasFaultThatDistortsFigures()
        ? "not computed: fix the results of this segment first"
        : "not computed: a value is missing in the file";
  }

  private static String name(MeasuringPlace place) {
    Side side = place.side();
    return PlainText.name(place.item()) + (side == null ? "" : ", side " + side.word());
  }
}
