package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SegmentNetwork;
import org.headhouse.linter.figures.SegmentRinging;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.line.IdleVoltage;
import org.headhouse.linter.line.LengthLimit;
import org.headhouse.linter.line.Levels;
import org.headhouse.linter.line.ReceivedVoltage;
import org.headhouse.linter.line.SegmentFigures;
import org.headhouse.linter.line.Settling;
import org.headhouse.linter.line.StubLimit;
import org.headhouse.linter.report.sheet.FigureTable.Row;
import org.headhouse.linter.report.sheet.FigureTable.Verdict;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/** The figures of one segment of the line. */
final class SegmentTable {
  private static final double ROUNDING = 1e-6;
  private static final String RINGING_SOURCE =
      "reflections by Branin's method; the middle of a bit: common practice, no source";

  private final SegmentLine line;
  private final @Nullable LineSettings settings;
  private final SitePolicy policy;
  private final Measure measure;
  private final List<Row> rows = new ArrayList<>();

  private SegmentTable(
      SegmentLine line, @Nullable LineSettings settings, SitePolicy policy, Measure measure) {
    this.line = line;
    this.settings = settings;
    this.policy = policy;
    this.measure = measure;
  }

  static List<FigureTable> of(
      Site site, List<SegmentLine> segments, SitePolicy policy, Measure measure) {
    List<FigureTable> tables = new ArrayList<>();
    for (SegmentLine segment : segments) {
      tables.add(
          new SegmentTable(segment, site.line().orNull(), policy, measure)
              .table(segments.size() == 1 ? "" : " " + (tables.size() + 1)));
    }
    return tables;
  }

  private FigureTable table(String number) {
    length();
    loads();
    SegmentFigures figures = line.figures();
    if (figures != null) {
      rows.add(
          Row.withoutLimit(
              "Loop resistance of the pair",
              Shown.ohms(figures.loopResistanceOhms()),
              "copper at " + measure.temperature(line.celsius()) + ", NBS Handbook 100"));
      idle(figures.lowestIdle());
      received(figures.weakestReceived());
      atTolerances(line.network());
      ringing(line.ringing());
    }
    stub();
    return new FigureTable(
        "Segment"
            + number
            + ": "
            + PlainText.name(line.segment().first())
            + " to "
            + PlainText.name(line.segment().last()),
        note(figures),
        rows);
  }

  private String note(@Nullable SegmentFigures figures) {
    if (figures == null) {
      return "Voltages are not computed: a length, a terminator, the cable or the bias is missing"
          + " or not understood.";
    }
    return line.hasFaultThatDistortsFigures()
        ? "The voltages are those of the line as the file has it. Results in part 1 change them:"
            + " fix those first."
        : "";
  }

  private void length() {
    Double metres = line.lengthMetres();
    if (metres == null) {
      return;
    }
    Integer baud = settings == null ? null : settings.baud().orNull();
    double byRate = baud == null ? Double.POSITIVE_INFINITY : LengthLimit.optimisticMetres(baud);
    double most = Math.min(LengthLimit.MODBUS_METRES, byRate);
    rows.add(
        new Row(
            "Cable length",
            measure.length(metres),
            "at most " + measure.length(most),
            left(most - metres),
            Verdict.of(
                metres <= Math.min(LengthLimit.LONGEST_METRES, byRate) + ROUNDING,
                metres <= most + ROUNDING),
            most == byRate
                ? "10⁸ m·bit/s over the rate: common practice, no source"
                : "MODBUS over Serial Line V1.02, 3.4.3: up to 9600 bit/s, AWG 26 or wider"));
  }

  private String left(double metres) {
    return metres >= 0 ? measure.length(metres) + " left" : measure.length(-metres) + " over";
  }

  private void loads() {
    double left = Levels.MOST_UNIT_LOADS - line.unitLoads();
    rows.add(
        new Row(
            "Unit loads",
            Shown.unitLoads(line.unitLoads()),
            "at most " + Shown.unitLoads(Levels.MOST_UNIT_LOADS),
            Shown.unitLoads(Math.abs(left)) + (line.isOverloaded() ? " over" : " left"),
            Verdict.of(!line.isOverloaded()),
            "TIA/EIA-485-A, as given by TI SLLA272 and ADI AN-960"));
  }

  private void idle(@Nullable IdleVoltage lowest) {
    if (lowest == null) {
      rows.add(
          Row.withoutLimit("Idle voltage", "undefined: no bias", "nodal analysis, TI SLLA272"));
    } else {
      rows.add(
          voltage(
              "Lowest idle voltage, at " + name(lowest.item()),
              lowest.volts(),
              Verdict.of(lowest.volts() >= Levels.RECEIVER_THRESHOLD_VOLTS),
              Levels.RECEIVER_THRESHOLD_VOLTS,
              "nodal analysis, TI SLLA272"));
    }
  }

  private void received(@Nullable ReceivedVoltage weakest) {
    if (weakest != null) {
      rows.add(
          voltage(
              "Weakest signal, at " + name(weakest.to()) + " from " + name(weakest.from()),
              weakest.volts(),
              Verdict.of(weakest.volts() >= Levels.RECEIVER_THRESHOLD_VOLTS),
              Levels.RECEIVER_THRESHOLD_VOLTS,
              "driver of 1.5 V, receiver of 200 mV, TI SLLA272"));
    }
  }

  /** What the rules judge beside the nominal values. */
  private void atTolerances(@Nullable SegmentNetwork network) {
    if (network == null) {
      return;
    }
    IdleVoltage idle = line.holdingBiases().isEmpty() ? null : network.lowestIdleAtWorst();
    ReceivedVoltage received = network.weakestReceivedAtWorst();
    String source =
        "nodal analysis, each part at that end of its tolerance that is worse; tolerances of the"
            + " policy: common practice, no source";
    if (idle != null) {
      rows.add(
          voltage(
              "Lowest idle voltage, worst parts, at " + name(idle.item()),
              idle.volts(),
              Verdict.of(true, idle.volts() >= policy.wantedIdleVolts()),
              policy.wantedIdleVolts(),
              source));
    }
    if (received != null) {
      rows.add(
          voltage(
              "Weakest signal, worst parts, at "
                  + name(received.to())
                  + " from "
                  + name(received.from()),
              received.volts(),
              Verdict.of(true, received.volts() >= policy.wantedSignalVolts()),
              policy.wantedSignalVolts(),
              source));
    }
    driver(network.driverLoads());
  }

  private void driver(@Nullable List<Double> loads) {
    if (loads == null || loads.isEmpty()) {
      return;
    }
    int least = 0;
    for (int item = 1; item < loads.size(); item++) {
      least = loads.get(item) < loads.get(least) ? item : least;
    }
    double ohms = loads.get(least);
    rows.add(
        new Row(
            "Heaviest load on a driver, at " + name(least),
            Shown.ohmsBeside(Levels.LEAST_DRIVER_LOAD_OHMS, ohms),
            "at least " + Shown.ohms(Levels.LEAST_DRIVER_LOAD_OHMS),
            Shown.ohms(Math.abs(ohms - Levels.LEAST_DRIVER_LOAD_OHMS))
                + (ohms < Levels.LEAST_DRIVER_LOAD_OHMS ? " under" : " left"),
            Verdict.of(ohms >= Levels.LEAST_DRIVER_LOAD_OHMS),
            "TIA/EIA-485-A, as given by TI SLLA272: 1.5 V into 54 ohm"));
  }

  private void ringing(@Nullable SegmentRinging ringing) {
    Settling settling = ringing == null ? null : ringing.settling();
    if (ringing == null || settling == null || !Double.isFinite(settling.seconds())) {
      return;
    }
    Settling.Pair worst = settling.worst();
    String quantity =
        "Edges settle"
            + (worst == null
                ? ""
                : ", at " + name(worst.receiver()) + " from " + name(worst.sender()));
    String computed = "after " + Shown.micros(settling.seconds()) + " at most";
    Double bit = ringing.bitSeconds();
    if (bit == null) {
      rows.add(Row.withoutLimit(quantity, computed, RINGING_SOURCE));
      return;
    }
    double left = SegmentRinging.middleSeconds(bit) - settling.seconds();
    rows.add(
        new Row(
            quantity,
            computed,
            "the middle of a bit, " + Shown.micros(SegmentRinging.middleSeconds(bit)),
            Shown.micros(Math.abs(left)) + (left < 0 ? " over" : " left"),
            Verdict.of(left >= 0),
            RINGING_SOURCE));
  }

  /**
   * @param wanted what the verdict is about, in volts; the margin is that over the threshold
   */
  private static Row voltage(
      String quantity, double volts, Verdict verdict, double wanted, String source) {
    return new Row(
        quantity,
        Shown.voltsBeside(wanted, volts),
        "at least " + Shown.volts(wanted),
        volts > 0 ? Shown.decibels(Levels.marginDecibels(volts)) : "reversed",
        verdict,
        source);
  }

  private void stub() {
    double longest = 0;
    String where = "";
    for (ChainItem item : line.segment().items()) {
      double metres =
          line.segment().connection(item).stub().optional().map(Length::metres).orElse(0.0);
      if (metres > longest) {
        longest = metres;
        where = PlainText.name(item);
      }
    }
    double most = line.longestStubMetres();
    if (longest > 0) {
      rows.add(
          new Row(
              "Longest stub, to " + where,
              measure.length(longest),
              "at most " + measure.length(most),
              left(most - longest),
              Verdict.of(longest <= StubLimit.LONGEST_METRES, longest <= most),
              most < StubLimit.LONGEST_METRES
                  ? "a tenth of the rise time, TI SN65HVD1x"
                  : "MODBUS over Serial Line V1.02, 3.4.3"));
    }
  }

  private String name(int item) {
    return PlainText.name(line.segment().items().get(item));
  }
}
