package org.headhouse.linter.report;

import java.io.OutputStream;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import org.headhouse.linter.figures.AcceptedFigures;
import org.headhouse.linter.figures.CapacitorTerminator;
import org.headhouse.linter.figures.EdgeFigures;
import org.headhouse.linter.figures.SegmentSummary;
import org.headhouse.linter.figures.SiteFigures;
import org.headhouse.linter.figures.StormSummary;
import org.headhouse.linter.figures.WorstFigures;
import org.headhouse.linter.line.ClosingTime;
import org.headhouse.linter.line.PairResistance;
import org.headhouse.linter.line.ReadingAge;
import org.headhouse.linter.line.ReadingRange;
import org.headhouse.linter.line.ReceivedVoltage;
import org.headhouse.linter.line.SegmentFigures;
import org.headhouse.linter.line.TrafficFigures;
import org.jspecify.annotations.Nullable;

/**
 * Figures as JSON, in full precision, written site by site so that none is kept.
 *
 * <p>What cannot be computed is null, and so is the resistance of a pair that nothing connects.
 */
public final class FiguresReport implements AutoCloseable {
  private static final double MILLIS = 1e3;
  private static final double MICROS = 1e6;

  private final JsonWriter json;

  /** Begins the report; the stream is left open. */
  public FiguresReport(OutputStream out) {
    json = PrettyJson.to(out);
    json.writeStartObject();
    json.writeArrayPropertyStart("sites");
  }

  /** Writes the figures of one site. */
  public void add(SiteFigures site) {
    json.writeStartObject();
    json.writeStringProperty("site", site.site());
    json.writeArrayPropertyStart("segments");
    site.segments().forEach(this::segment);
    json.writeEndArray();
    json.writeName("traffic");
    traffic(site.traffic());
    json.writeName("storm");
    storm(site.storm());
    json.writeEndObject();
  }

  /** Ends the report. */
  @Override
  public void close() {
    json.writeEndArray();
    json.writeEndObject();
    json.writeRaw('\n');
    json.close();
  }

  private void segment(SegmentSummary segment) {
    SegmentFigures figures = segment.figures();
    json.writeStartObject();
    json.writeArrayPropertyStart("items");
    segment.items().forEach(json::writeString);
    json.writeEndArray();
    number("lengthMetres", segment.lengthMetres());
    number("loopResistanceOhms", figures == null ? null : figures.loopResistanceOhms());
    number("unitLoads", segment.unitLoads());
    byItem("idleVolts", segment.items(), figures == null ? null : figures.idleVolts());
    weakest(segment.items(), figures == null ? null : figures.weakestReceived());
    pair(figures == null ? null : figures.pairResistance());
    byItem("driverLoadOhms", segment.items(), segment.driverLoadOhms());
    worst(segment.items(), segment.worst());
    accepted(segment.items(), segment.accepted());
    edges(segment.items(), segment.edges());
    terminators(segment);
    json.writeEndObject();
  }

  /** At the worst corner of all tolerances. */
  private void worst(List<String> items, @Nullable WorstFigures worst) {
    json.writeName("worst");
    if (worst == null) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    byItem("idleVolts", items, worst.idleVolts());
    weakest(items, worst.weakestReceived());
    json.writeEndObject();
  }

  /** What a meter may show. */
  private void accepted(List<String> items, @Nullable AcceptedFigures accepted) {
    json.writeName("accepted");
    if (accepted == null) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    rangesByItem("pairResistanceOhms", items, accepted.pairOhms());
    rangesByItem("idleVolts", items, accepted.idleVolts());
    json.writeEndObject();
  }

  /** How long an edge rings. */
  private void edges(List<String> items, @Nullable EdgeFigures edges) {
    json.writeName("settling");
    if (edges == null) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    micros("settledMicros", edges.settledSeconds());
    json.writeName("from");
    name(items, edges.from());
    json.writeName("to");
    name(items, edges.to());
    number("bitMicros", edges.bitSeconds() == null ? null : edges.bitSeconds() * MICROS);
    json.writeEndObject();
  }

  private void name(List<String> items, @Nullable Integer item) {
    if (item == null) {
      json.writeNull();
    } else {
      json.writeString(items.get(item));
    }
  }

  private void terminators(SegmentSummary segment) {
    json.writeArrayPropertyStart("capacitorTerminators");
    for (CapacitorTerminator terminator : segment.terminators()) {
      json.writeStartObject();
      json.writeStringProperty("at", segment.items().get(terminator.item()));
      micros("timeConstantMicros", terminator.timing().timeConstantSeconds());
      micros("bitMicros", terminator.timing().bitSeconds());
      micros("roundTripMicros", terminator.timing().roundTripSeconds());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void micros(String name, double seconds) {
    number(name, seconds * MICROS);
  }

  private void byItem(String name, List<String> items, @Nullable List<Double> values) {
    byItem(name, items, values, this::number);
  }

  private void rangesByItem(String name, List<String> items, @Nullable List<ReadingRange> ranges) {
    byItem(name, items, ranges, (item, range) -> range(item, range.low(), range.high()));
  }

  /** By name; of two items with one name the first. */
  private <T> void byItem(
      String name, List<String> items, @Nullable List<T> values, BiConsumer<String, T> writer) {
    json.writeName(name);
    if (values == null) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    Set<String> written = new HashSet<>();
    for (int i = 0; i < values.size(); i++) {
      if (written.add(items.get(i))) {
        writer.accept(items.get(i), values.get(i));
      }
    }
    json.writeEndObject();
  }

  private void weakest(List<String> items, @Nullable ReceivedVoltage weakest) {
    json.writeName("weakestReceived");
    if (weakest == null) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    json.writeStringProperty("from", items.get(weakest.from()));
    json.writeStringProperty("to", items.get(weakest.to()));
    number("volts", weakest.volts());
    json.writeEndObject();
  }

  private void pair(@Nullable PairResistance pair) {
    if (pair == null) {
      number("pairResistanceOhms", null);
    } else {
      range("pairResistanceOhms", pair.lowOhms(), pair.highOhms());
    }
  }

  private void range(String name, double low, double high) {
    json.writeName(name);
    json.writeStartObject();
    number("low", low);
    number("high", high);
    json.writeEndObject();
  }

  private void traffic(@Nullable TrafficFigures traffic) {
    if (traffic == null) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    millis("characterMillis", traffic.characterSeconds());
    millis("broadcastMillis", traffic.broadcastSeconds());
    millis("pollMillis", traffic.pollSeconds());
    number("utilisation", traffic.utilisation());
    millis("worstAgeMillis", traffic.worstAgeSeconds());
    millis("worstAgeOneSilentMillis", traffic.worstAgeOneSilentSeconds());
    json.writeNumberProperty("lostBroadcasts", traffic.lostBroadcasts());
    json.writeName("readingAge");
    age(traffic.age());
    json.writeName("readingAgeOneSilent");
    age(traffic.ageOneSilent());
    json.writeEndObject();
  }

  private void age(@Nullable ReadingAge age) {
    if (age == null) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    millis("periodsMillis", age.periodsSeconds());
    millis("otherMillis", age.otherSeconds());
    millis("broadcastMillis", age.frameSeconds());
    millis("totalMillis", age.totalSeconds());
    json.writeEndObject();
  }

  private void storm(@Nullable StormSummary storm) {
    if (storm == null) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    millis("closeWithinMillis", storm.closeWithinSeconds());
    json.writeArrayPropertyStart("units");
    for (StormSummary.OfUnit unit : storm.units()) {
      ClosingTime time = unit.time();
      json.writeStartObject();
      json.writeStringProperty("unit", unit.name());
      millis("averagingMillis", time.averagingSeconds());
      millis("readingAgeMillis", time.broadcastSeconds());
      millis("deadLineMillis", time.staleSeconds());
      millis("closingMillis", time.closeSeconds());
      millis("totalMillis", time.isComplete() ? time.totalSeconds() : null);
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void millis(String name, @Nullable Double seconds) {
    number(name, seconds == null ? null : seconds * MILLIS);
  }

  private void number(String name, @Nullable Double value) {
    json.writeName(name);
    if (value == null || !Double.isFinite(value)) {
      json.writeNull();
    } else {
      json.writeNumber(value);
    }
  }
}
