package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.StormSum;
import org.headhouse.linter.line.ClosingTime;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/**
 * From the gust to closed vents, part by part, of each unit that moves vents or may do so.
 *
 * @param lost how many broadcasts are taken for lost, in words
 * @param rows in the order of the first unit of each; empty where no unit moves vents and nobody
 *     asks for it
 */
record StormTable(String lost, List<Row> rows) {
  private static final String UNKNOWN = "not known";

  StormTable {
    rows = List.copyOf(rows);
  }

  /**
   * Units that close in the same time, part by part.
   *
   * @param units their names, in the order of the chain
   * @param waiting the reading's age or the dead line, whichever is longer
   * @param waitsFor which of them it is, and what to know of it
   * @param fails whether it is outside its limit
   */
  record Row(
      List<String> units,
      String averaging,
      String waiting,
      String waitsFor,
      String closing,
      String sum,
      String limit,
      String verdict,
      boolean fails) {

    Row {
      units = List.copyOf(units);
    }

    private Row with(List<String> names) {
      return new Row(names, averaging, waiting, waitsFor, closing, sum, limit, verdict, fails);
    }
  }

  static StormTable of(Site site, LineFigures figures) {
    Map<Integer, StormSum> sums = new HashMap<>();
    figures.storm().sums().forEach(sum -> sums.put(sum.unit().index(), sum));
    Interval within =
        site.weatherStation()
            .optional()
            .flatMap(station -> station.closeWithin().optional())
            .orElse(null);
    Map<Row, List<String>> units = new LinkedHashMap<>();
    for (Unit unit : site.units()) {
      StormSum sum = sums.get(unit.index());
      if (sum != null || !unit.vents().isGiven()) {
        units
            .computeIfAbsent(
                sum == null ? unknown(limit(within)) : row(sum, within), row -> new ArrayList<>())
            .add(PlainText.name(unit));
      }
    }
    List<Row> rows = new ArrayList<>();
    units.forEach((row, names) -> rows.add(row.with(names)));
    int lost = figures.lostBroadcasts();
    return new StormTable(
        switch (lost) {
          case 0 -> "no broadcast is lost";
          case 1 -> "one broadcast is lost";
          default -> lost + " broadcasts in a row are lost";
        },
        sums.isEmpty() && within == null ? List.of() : rows);
  }

  private static Row row(StormSum sum, @Nullable Interval within) {
    ClosingTime time = sum.time();
    boolean over = within != null && time.totalSeconds() > within.seconds();
    boolean staysOpen =
        sum.waitsForBroadcast()
            && sum.unit().onStaleReadings().isGiven()
            && !sum.closesOnDeadLine();
    return new Row(
        List.of(),
        shown(time.averagingSeconds()),
        sum.waitsForBroadcast() ? waiting(time, staysOpen) : "none",
        waitsFor(sum, staysOpen),
        shown(time.closeSeconds()),
        time.isComplete()
            ? Shown.seconds(time.totalSeconds())
            : over ? "at least " + Shown.seconds(time.totalSeconds()) : UNKNOWN,
        limit(within),
        verdict(sum, within, over, staysOpen),
        over || staysOpen);
  }

  private static String verdict(
      StormSum sum, @Nullable Interval within, boolean over, boolean staysOpen) {
    if (over) {
      return "outside limit";
    }
    if (staysOpen) {
      return "stays open on a dead line";
    }
    boolean known =
        sum.time().isComplete()
            && (!sum.waitsForBroadcast() || sum.unit().onStaleReadings().isGiven());
    return !known ? UNKNOWN : within == null ? "no limit" : "within limit";
  }

  private static String waiting(ClosingTime time, boolean staysOpen) {
    boolean known = time.broadcastSeconds() != null && (staysOpen || time.staleSeconds() != null);
    return known ? Shown.seconds(time.waitingSeconds()) : UNKNOWN;
  }

  private static String waitsFor(StormSum sum, boolean staysOpen) {
    if (!sum.waitsForBroadcast()) {
      return "the station is wired to it";
    }
    Interval staleAfter = sum.unit().staleAfter().orNull();
    if (staysOpen) {
      return "age of the reading; on a dead line it stays open ("
          + PlainText.word(sum.unit().onStaleReadings())
          + ")";
    }
    return sum.time().isLongestOnDeadLine() && staleAfter != null
        ? "dead line, stale after " + staleAfter.written()
        : sum.time().broadcastSeconds() == null ? "" : "age of the reading";
  }

  private static Row unknown(String limit) {
    return new Row(
        List.of(),
        UNKNOWN,
        UNKNOWN,
        "the file does not say whether it moves vents",
        UNKNOWN,
        UNKNOWN,
        limit,
        UNKNOWN,
        false);
  }

  private static String limit(@Nullable Interval within) {
    return within == null ? "" : "at most " + within.written();
  }

  private static String shown(@Nullable Double seconds) {
    return seconds == null ? UNKNOWN : Shown.seconds(seconds);
  }
}
