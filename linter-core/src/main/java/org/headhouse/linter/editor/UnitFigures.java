package org.headhouse.linter.editor;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.check.ExaminedFile;
import org.headhouse.linter.figures.AcceptedFigures;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SegmentNetwork;
import org.headhouse.linter.figures.SegmentSummary;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.SiteFigures;
import org.headhouse.linter.line.ReadingAge;
import org.headhouse.linter.line.ReadingRange;
import org.headhouse.linter.line.ReceivedVoltage;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/** The computed figures at one item of the chain, as lines of Markdown. */
final class UnitFigures {
  private final ExaminedFile.ReadSite site;
  private final LineFigures line;
  private final SiteFigures figures;

  UnitFigures(ExaminedFile.ReadSite site) {
    this.site = site;
    this.line = site.figures();
    this.figures = SiteFigures.of(site.site(), line);
  }

  /** What is computed at the items of a name; a repeater has figures on both sides. */
  List<String> at(String name) {
    List<String> lines = new ArrayList<>();
    List<SegmentLine> segments = line.segments();
    for (int index = 0; index < segments.size(); index++) {
      List<ChainItem> items = segments.get(index).segment().items();
      for (int place = 0; place < items.size(); place++) {
        if (items.get(place).name().is(name)) {
          String from = items.get(0).name().or("item " + (items.get(0).index() + 1));
          String to =
              items
                  .get(items.size() - 1)
                  .name()
                  .or("item " + (items.get(items.size() - 1).index() + 1));
          lines.add("Computed, in the segment from \"" + from + "\" to \"" + to + "\":");
          lines.add("");
          add(lines, segments.get(index), figures.segments().get(index), place);
          lines.add("");
        }
      }
    }
    Unit unit = site.site().unit(name);
    if (unit != null && unit.isFollower()) {
      lines.add("- Readings: " + age());
    }
    return lines;
  }

  private static void add(
      List<String> lines, SegmentLine segment, SegmentSummary summary, int place) {
    SegmentNetwork network = segment.network();
    if (network == null || summary.figures() == null) {
      lines.add("- Nothing: a value that the figures need is missing or not understood");
      return;
    }
    List<Double> idle = summary.figures().idleVolts();
    List<Double> worst = summary.worst() == null ? null : summary.worst().idleVolts();
    lines.add(
        idle == null
            ? "- Idle voltage: no bias on this segment"
            : "- Idle voltage: "
                + Shown.volts(idle.get(place))
                + (worst == null ? "" : ", at worst " + Shown.volts(worst.get(place))));
    List<ReceivedVoltage> received = ReceivedVoltage.weakestAtEachItem(network.circuit());
    if (!received.isEmpty()) {
      ReceivedVoltage weakest = received.get(place);
      lines.add(
          "- Weakest received voltage: "
              + Shown.volts(weakest.volts())
              + ", from \""
              + summary.items().get(weakest.from())
              + "\"; a receiver needs 200 mV");
    }
    AcceptedFigures accepted = summary.accepted();
    lines.add("- Pair resistance, all supplies off: " + range(accepted, place));
  }

  private static String range(@Nullable AcceptedFigures accepted, int place) {
    List<ReadingRange> ohms = accepted == null ? null : accepted.pairOhms();
    if (ohms == null) {
      return "not applicable, no terminator conducts steadily";
    }
    ReadingRange range = ohms.get(place);
    return "acceptable from " + Shown.ohms(range.low()) + " to " + Shown.ohms(range.high());
  }

  private String age() {
    ReadingAge age = line.storm().age();
    if (age == null) {
      return "their age is unknown, the file has no broadcast or one that is not understood";
    }
    return "up to "
        + Shown.seconds(age.totalSeconds())
        + " old with one polled unit silent"
        + (line.lostBroadcasts() == 0
            ? ""
            : " and " + line.lostBroadcasts() + " broadcast lost in a row")
        + (line.storm().pollsKnown() ? "" : "; the polls are not known, so it can be more");
  }
}
