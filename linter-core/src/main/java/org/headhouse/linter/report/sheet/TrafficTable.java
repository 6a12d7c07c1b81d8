package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.line.ReadingAge;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.line.TrafficFigures;
import org.headhouse.linter.report.sheet.FigureTable.Row;
import org.headhouse.linter.report.sheet.FigureTable.Verdict;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.WeatherStation;
import org.jspecify.annotations.Nullable;

/** The use of the time on the line, and the age of readings. */
final class TrafficTable {
  private static final String TIMES =
      "MODBUS over Serial Line V1.02 and Application Protocol V1.1b3, added up";

  private TrafficTable() {}

  static FigureTable of(Site site, LineFigures line, SitePolicy policy) {
    Traffic traffic = line.traffic();
    if (traffic == null) {
      return new FigureTable(
          "Time",
          line.isTrafficUnderstood()
              ? "The file says nothing of broadcast or polls over the line: times are not computed."
              : "What the file says of the traffic is not understood: times are not computed.",
          List.of());
    }
    TrafficFigures figures = TrafficFigures.of(traffic, policy.lostBroadcasts());
    double busiest = policy.mostUtilisation();
    List<Row> rows = new ArrayList<>();
    rows.add(
        Row.withoutLimit(
            "One character of " + traffic.serial().characterBits() + " bits",
            Shown.millis(figures.characterSeconds()),
            "MODBUS over Serial Line V1.02, 2.5.1"));
    if (figures.broadcastSeconds() != null) {
      rows.add(
          Row.withoutLimit(
              "One broadcast with its pause", Shown.seconds(figures.broadcastSeconds()), TIMES));
    }
    if (figures.pollSeconds() != null) {
      rows.add(
          Row.withoutLimit("The poll of one unit", Shown.seconds(figures.pollSeconds()), TIMES));
    }
    double use = figures.utilisation();
    rows.add(
        new Row(
            "Line utilisation",
            Shown.percent(use),
            "at most " + Shown.percent(busiest),
            Shown.percent(Math.abs(busiest - use)) + (use <= busiest ? " left" : " over"),
            Verdict.of(use <= 1, use <= busiest),
            "common practice, no source"));
    Interval allowed =
        site.weatherStation()
            .optional()
            .map(WeatherStation::maximumAge)
            .map(age -> age.orNull())
            .orElse(null);
    if (use <= 1) {
      String lost =
          "Oldest reading, "
              + figures.lostBroadcasts()
              + (figures.lostBroadcasts() == 1 ? " broadcast lost" : " broadcasts lost");
      age(lost, figures.age(), allowed, false, rows);
      age(lost + ", one unit silent", figures.ageOneSilent(), allowed, true, rows);
    }
    return new FigureTable("Time", "", rows);
  }

  private static void age(
      String quantity,
      @Nullable ReadingAge age,
      @Nullable Interval allowed,
      boolean isOneSilent,
      List<Row> rows) {
    if (age == null) {
      return;
    }
    double seconds = age.totalSeconds();
    if (allowed == null) {
      rows.add(Row.withoutLimit(quantity, Shown.seconds(seconds), TIMES));
      return;
    }
    double left = allowed.seconds() - seconds;
    rows.add(
        new Row(
            quantity,
            Shown.seconds(seconds),
            "at most " + allowed.written(),
            Shown.seconds(Math.abs(left)) + (left >= 0 ? " left" : " over"),
            Verdict.of(left >= 0 || isOneSilent, left >= 0),
            "maximum-age of the site; " + TIMES));
  }
}
