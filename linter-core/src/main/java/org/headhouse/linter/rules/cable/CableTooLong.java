package org.headhouse.linter.rules.cable;

import java.util.List;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.Shown;
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

  private record Limit(double metres, Level level, String source, String reason) {}

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
      report(line, passed.get(0), firstRepeater(line, passed), context);
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
            "the most of TIA/EIA-485-A",
            "the far units no longer hear the head unit for certain");
    Limit modbus =
        new Limit(
            LengthLimit.MODBUS_METRES,
            Level.WARNING,
            modbusSource(baud, wire),
            "there is little left for bad joints and damp cable");
    if (baud == null) {
      return List.of(longest, modbus);
    }
    Limit optimistic =
        new Limit(
            LengthLimit.optimisticMetres(baud),
            Level.ERROR,
            "the most at " + baud + " bit/s",
            "the edges of the bits run into each other");
    Limit careful =
        new Limit(
            LengthLimit.carefulMetres(baud),
            Level.NOTE,
            "what keeps the jitter under 10 % at " + baud + " bit/s",
            "units with an inaccurate clock may lose characters");
    return longest.metres() <= optimistic.metres()
        ? List.of(longest, optimistic, modbus, careful)
        : List.of(optimistic, longest, modbus, careful);
  }

  /** The limit with the conditions that it is given under, and what they mean for this line. */
  private static String modbusSource(@Nullable Integer baud, @Nullable Wire wire) {
    String given =
        "the most of the Modbus specification, given for up to "
            + LengthLimit.MODBUS_MOST_BAUD
            + " bit/s and AWG "
            + LengthLimit.MODBUS_THINNEST_AWG
            + " or wider";
    if (baud != null && baud > LengthLimit.MODBUS_MOST_BAUD) {
      return given + "; no higher rate allows more";
    }
    return baud == null || wire == null || LengthLimit.isGivenByModbus(baud, wire)
        ? given
        : given + "; a thinner conductor allows less";
  }

  private static void report(
      SegmentLine line, Limit limit, ChainItem repeater, RuleContext context) {
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
                        + Shown.metres(line.knownMetres())
                        + " long, over the "
                        + Shown.atMostMetres(limit.metres())
                        + " that are "
                        + limit.source(),
                    limit.reason(),
                    firstRun
                        ? "put a repeater into the run behind " + repeater.called()
                        : "put a repeater at " + repeater.called() + " or before"))
            .at(limit.level())
            .aboutItems(ChainItem.names(items.subList(items.indexOf(within) + 1, items.size()))));
  }
}
