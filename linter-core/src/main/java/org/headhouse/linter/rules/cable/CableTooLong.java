package org.headhouse.linter.rules.cable;

import java.util.List;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SiteMeasure;
import org.headhouse.linter.line.LengthLimit;
import org.headhouse.linter.line.Wire;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/**
 * {@code cable.too-long}: the most severe limit of {@link LengthLimit} that is passed, also by what
 * is known of a length.
 */
public final class CableTooLong implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "cable.too-long",
          "No segment is longer than its baud rate and the standards allow.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  private record Limit(
      double metres, Level level, String source, String condition, String reason) {}

  @Override
  public void check(Site site, RuleContext context) {
    LineSettings settings = site.line().orNull();
    Integer baud = settings == null ? null : settings.baud().orNull();
    for (SegmentLine line : context.figures().segments()) {
      if (!line.isLongerThan(shortest(baud))) {
        continue;
      }
      List<Limit> passed =
          limits(baud, line.wire()).stream()
              .filter(limit -> line.isLongerThan(limit.metres()))
              .toList();
      report(line, passed.get(0), firstRepeater(line, passed), SiteMeasure.of(site), context);
    }
  }

  private static double shortest(@Nullable Integer baud) {
    return baud == null
        ? LengthLimit.MODBUS_METRES
        : Math.min(LengthLimit.MODBUS_METRES, LengthLimit.carefulMetres(baud));
  }

  /**
   * The last item where a repeater keeps the part before it within the limits that are passed; one
   * that is only noted does not count beside a more severe one.
   */
  private static ChainItem firstRepeater(SegmentLine line, List<Limit> passed) {
    return line.lastWithinMetres(
        passed.stream()
            .filter(limit -> limit.level() != Level.NOTE || limit.equals(passed.get(0)))
            .mapToDouble(Limit::metres)
            .min()
            .orElseThrow());
  }

  private static List<Limit> limits(@Nullable Integer baud, @Nullable Wire wire) {
    Limit longest =
        new Limit(
            LengthLimit.LONGEST_METRES,
            Level.ERROR,
            "TIA/EIA-485-A allows",
            "",
            "far units may miss messages");
    Limit modbus =
        new Limit(
            LengthLimit.MODBUS_METRES,
            Level.WARNING,
            "Modbus allows",
            modbusCondition(baud, wire),
            "little margin is left for bad joints and damp cable");
    if (baud == null) {
      return List.of(longest, modbus);
    }
    Limit optimistic =
        new Limit(
            LengthLimit.optimisticMetres(baud),
            Level.ERROR,
            baud + " bit/s allows at most",
            "",
            "the edges of the bits run into each other");
    Limit careful =
        new Limit(
            LengthLimit.carefulMetres(baud),
            Level.NOTE,
            "jitter at " + baud + " bit/s is under 10 % up to",
            "",
            "units with an inaccurate clock may lose characters");
    return longest.metres() <= optimistic.metres()
        ? List.of(longest, optimistic, modbus, careful)
        : List.of(optimistic, longest, modbus, careful);
  }

  /** The limit with the conditions that it is given under, and what they mean for this line. */
  private static String modbusCondition(@Nullable Integer baud, @Nullable Wire wire) {
    String given =
        " up to "
            + LengthLimit.MODBUS_MOST_BAUD
            + " bit/s on AWG "
            + LengthLimit.MODBUS_THINNEST_AWG
            + " or thicker";
    if (baud != null && baud > LengthLimit.MODBUS_MOST_BAUD) {
      return given + ", and no more at a higher rate";
    }
    return baud == null || wire == null || LengthLimit.isGivenByModbus(baud, wire)
        ? given
        : given + ", less on a thinner conductor";
  }

  private static void report(
      SegmentLine line, Limit limit, ChainItem repeater, Measure measure, RuleContext context) {
    boolean firstRun = repeater.equals(line.segment().first());
    List<ChainItem> items = line.segment().items();
    ChainItem within = line.lastWithinMetres(limit.metres());
    context.report(
        context
            .finding(
                within.cableToNext().place(),
                new Message(
                    "the segment from "
                        + line.segment().first().called()
                        + " to "
                        + line.segment().last().called()
                        + (line.lengthMetres() == null ? " is at least " : " is ")
                        + measure.length(line.knownMetres())
                        + " long; "
                        + limit.source()
                        + " "
                        + measure.ofStandard(limit.metres())
                        + limit.condition(),
                    limit.reason(),
                    firstRun
                        ? "fit a repeater in the run after " + repeater.called()
                        : "fit a repeater at or before " + repeater.called()))
            .at(limit.level())
            .aboutItems(ChainItem.names(items.subList(items.indexOf(within) + 1, items.size()))));
  }
}
