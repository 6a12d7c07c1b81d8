package org.headhouse.linter.report.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.MeasuringPlace;
import org.headhouse.linter.figures.ReadingUnit;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SegmentReadings;
import org.headhouse.linter.line.ReadingRange;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.proof.RequiredProofs;
import org.headhouse.linter.proof.StaleResponse;
import org.headhouse.linter.proof.VisitEntry;
import org.headhouse.linter.report.CsvLine;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Site;

/**
 * What a record of the whole line has to prove, one row each, to fill in on a visit: RFC 4180 with
 * a line of headings, in UTF-8. Nothing is filled in beforehand but what is acceptable, and names
 * are whole, so that a row is found again by them.
 */
final class VisitCsv {
  /**
   * The byte order mark, without which many spreadsheets take UTF-8 for something else. The lists
   * that programs take in have none: to many of them it is a part of the first heading.
   */
  private static final char SIGNATURE = '\uFEFF';

  private static final String SEEN = "yes";

  private final SiteFacts facts;
  private final String speed;
  private final List<List<String>> rows = new ArrayList<>();

  private VisitCsv(SiteFacts facts, Measure measure) {
    this.facts = facts;
    this.speed = measure == Measure.US ? "mph" : "m/s";
  }

  /**
   * The whole file.
   *
   * @param measure the units that speeds of the wind are asked for in
   */
  static byte[] of(SiteFacts facts, Measure measure) {
    VisitCsv csv = new VisitCsv(facts, measure);
    Site site = facts.site();
    csv.row(VisitEntry.SITE.words(), site.id().or(site.source().path()), "");
    Set<Proof> all = RequiredProofs.of(site);
    // Vents are tried before power is off, and what is measured comes last.
    all.stream().filter(one -> !one.kind().isMeasured()).forEach(csv::add);
    all.stream().filter(one -> one.kind().isMeasured()).forEach(csv::add);
    String lines =
        Stream.concat(Stream.of(VisitEntry.COLUMNS), csv.rows.stream())
            .map(CsvLine::of)
            .collect(Collectors.joining());
    return (SIGNATURE + lines).getBytes(UTF_8);
  }

  private void add(Proof proof) {
    String where = VisitEntry.where(proof.at(), proof.side());
    switch (proof.kind()) {
      case READINGS -> row(VisitEntry.READINGS.asked(SEEN), where, "");
      case STORM_RESPONSE -> {
        row(VisitEntry.STORM_RESPONSE.asked("s"), where, closeTime(proof));
        row(VisitEntry.WIND_LIMIT.asked(speed), where, "");
      }
      case STALE_RESPONSE -> row(staleResponse(proof).asked(SEEN), where, "");
      case PAIR_RESISTANCE ->
          row(VisitEntry.PAIR_RESISTANCE.asked("ohm"), where, acceptable(proof));
      case IDLE_VOLTAGE -> row(VisitEntry.IDLE_VOLTAGE.asked("V"), where, acceptable(proof));
    }
  }

  /** What is seen there: a list that asks whether vents shut gets a no where they are to stay. */
  private VisitEntry staleResponse(Proof proof) {
    return facts.site().units().stream()
            .filter(unit -> unit.name().is(proof.at()))
            .anyMatch(StaleResponse::staysOpen)
        ? VisitEntry.STALE_HOLD
        : VisitEntry.STALE_RESPONSE;
  }

  private void row(String what, String where, String acceptable) {
    rows.add(List.of(what, where, acceptable, "", "", "", ""));
  }

  private String closeTime(Proof proof) {
    Site site = facts.site();
    return site.units().stream()
        .filter(unit -> unit.name().is(proof.at()))
        .flatMap(unit -> unit.closeTime().optional().stream())
        .map(time -> "at most " + time.written())
        .findFirst()
        .orElse("");
  }

  /** As the rules on records have it; empty where nothing is judged. */
  private String acceptable(Proof proof) {
    for (SegmentLine line : facts.figures().segments()) {
      for (MeasuringPlace place : line.measuringPlaces()) {
        if (isAt(place, proof) && !line.hasFaultThatDistortsFigures()) {
          return acceptable(proof.kind(), line.readings(), place.index());
        }
      }
    }
    return "";
  }

  private static boolean isAt(MeasuringPlace place, Proof proof) {
    ChainItem item = place.item();
    return item.name().is(proof.at()) && place.side() == proof.side();
  }

  private static String acceptable(Proof.Kind kind, SegmentReadings readings, int index) {
    if (kind == Proof.Kind.IDLE_VOLTAGE) {
      return readings.isHeld() ? ReadingUnit.VOLT.range(readings.idleVolts(index)) : "";
    }
    ReadingRange range = readings.pairOhms(index);
    return range == null ? "" : ReadingUnit.OHM.range(range);
  }
}
