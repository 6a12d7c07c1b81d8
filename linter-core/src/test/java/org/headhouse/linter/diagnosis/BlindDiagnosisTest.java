package org.headhouse.linter.diagnosis;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.bind.DeviceTypesBinder;
import org.headhouse.linter.bind.SiteBinder;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.line.Ngspice;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Document;
import org.headhouse.linter.yaml.YamlReader;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Lines with one thing wrong that the circuit simulator ngspice measures: the diagnosis sees the
 * site as it should be and what a hand meter shows, and never leaves out what is wrong.
 *
 * <p>{@code -Dcases=2016 -Dsummary=FILE} tries as many as the page on diagnosis reports, and keeps
 * what came of them.
 */
class BlindDiagnosisTest {
  private static final int IN_ONE_RUN = 24;
  private static final int MOST_MEASUREMENTS = 25;

  @Test
  @Tag("long")
  void theTrueFaultIsAlwaysAmongThoseThatAreLeft(@TempDir Path folder) throws Exception {
    int cases = Integer.getInteger("cases", 240);
    Tally tally = new Tally();
    Ngspice ngspice = Ngspice.in(folder);
    Random random = new Random(Long.getLong("seed", 19));
    SiteLinter linter =
        SiteLinter.builder()
            .deviceTypes(SiteInput.text("device-types.yaml", BlindLine.types()))
            .build();
    for (int from = 0; from < cases; from += IN_ONE_RUN) {
      List<BlindLine> lines = new ArrayList<>();
      StringBuilder netlist = new StringBuilder();
      for (int number = from; number < from + IN_ONE_RUN; number++) {
        String kind = BlindLine.KINDS.get(number % BlindLine.KINDS.size());
        BlindLine line = new BlindLine(number, kind, random);
        lines.add(line);
        netlist.append(line.netlist());
      }
      Map<String, Double> volts = ngspice.operatingPoint(netlist.toString());
      for (BlindLine line : lines) {
        follow(line, volts, linter, new Random(random.nextLong()), tally);
      }
    }
    String keep = System.getProperty("summary");
    if (keep != null) {
      Files.writeString(Path.of(keep), tally + "\n");
    }
  }

  private static void follow(
      BlindLine line, Map<String, Double> volts, SiteLinter linter, Random random, Tally tally) {
    List<String> readings = new ArrayList<>();
    readings.add(reading(line, volts, "pair-resistance", null, 0, random));
    readings.add(reading(line, volts, "idle-voltage", null, 0, random));
    SegmentDiagnosis diagnosis = diagnosis(line, readings, linter);
    tally.begin(diagnosis);
    while (diagnosis.next() != null) {
      assertThat(readings).as("%s", readings).hasSizeLessThan(MOST_MEASUREMENTS);
      NextMeasurement next = diagnosis.next();
      String toward = next.toward() == null ? null : next.toward().word();
      int item = next.at().charAt(next.at().length() - 1) - 'A';
      readings.add(reading(line, volts, next.reading(), toward, item, random));
      diagnosis = diagnosis(line, readings, linter);
    }
    tally.end(diagnosis, readings.size());
    tally.endOfPlan(followPlan(line, volts, random));
  }

  /** The table of the sheet, followed by hand: how many faults the group at its end has. */
  private static int followPlan(BlindLine line, Map<String, Double> volts, Random random) {
    SegmentPlan plan = plan(line);
    int step = 0;
    while (true) {
      SegmentPlan.Step here = plan.steps().get(step);
      double shown = shown(line, volts, here.measurement(), random);
      SegmentPlan.Way way =
          here.ways().stream().filter(one -> shown <= one.upTo()).findFirst().orElseThrow();
      if (way.step() < 0) {
        SegmentPlan.Group group = plan.groups().get(way.group());
        assertThat(group.faults()).as("%s at %s", line.kind, line.at).anyMatch(line::isMeant);
        return group.faults().size();
      }
      step = way.step();
    }
  }

  private static SegmentPlan plan(BlindLine line) {
    Document types = document("device-types.yaml", BlindLine.types());
    Document document = document("blind.yaml", line.site(List.of()));
    Site site =
        SiteBinder.bind(
                document.source(),
                requireNonNull(document.root()),
                DeviceTypesBinder.bind(types.source(), requireNonNull(types.root())).model())
            .model();
    LineFigures figures = new LineFigures(site, SitePolicy.DEFAULT);
    return SegmentPlanner.plan(
        site, figures.segments().get(0), figures, SitePolicy.DEFAULT, Integer.MAX_VALUE);
  }

  private static Document document(String name, String text) {
    return new YamlReader(Limits.DEFAULT).read(new SourceText(name, text));
  }

  private static double shown(
      BlindLine line, Map<String, Double> volts, NextMeasurement next, Random random) {
    String toward = next.toward() == null ? null : next.toward().word();
    int item = next.at().charAt(next.at().length() - 1) - 'A';
    double found = line.found(volts, next.reading(), toward, item);
    return shown(found, next.reading().endsWith("resistance"), random);
  }

  private static SegmentDiagnosis diagnosis(
      BlindLine line, List<String> readings, SiteLinter linter) {
    List<SiteDiagnosis> sites = new ArrayList<>();
    String text = line.site(readings);
    linter.diagnose(Stream.of(SiteInput.text("blind.yaml", text)), sites::add);
    SegmentDiagnosis segment = sites.get(0).segments().get(0);
    assertThat(segment.notJudged()).as(text).isEmpty();
    assertThat(segment.candidates().stream().flatMap(one -> one.faults().stream()))
        .as("%s at %s %s%n%s", line.kind, line.at, line.conductors, text)
        .anyMatch(line::isMeant);
    return segment;
  }

  /** A hand meter of 1 % with 0.8 ohm or 3 mV, read to three digits. */
  private static String reading(
      BlindLine line,
      Map<String, Double> volts,
      String quantity,
      @Nullable String toward,
      int item,
      Random random) {
    double found = line.found(volts, quantity, toward, item);
    boolean ohms = quantity.endsWith("resistance");
    double shown = shown(found, ohms, random);
    String value = ohms ? ohms(Math.max(0, shown)) : String.format(Locale.ROOT, "%.3f V", shown);
    return "{at: "
        + line.called(item)
        + (toward == null ? "" : ", toward: " + toward)
        + ", "
        + quantity
        + ": "
        + value
        + "}";
  }

  /** As far off as the meter may be every third time. */
  private static double shown(double found, boolean ohms, Random random) {
    double end = random.nextBoolean() ? 1 : -1;
    double off = random.nextInt(3) == 0 ? end : 2 * random.nextDouble() - 1;
    return (found + off * (ohms ? 0.8 : 0.003)) / (1 - off * 0.01 * Math.signum(found));
  }

  private static String ohms(double shown) {
    if (shown > 2e6) {
      return "999999 kohm";
    }
    return shown < 1000
        ? String.format(Locale.ROOT, "%.1f ohm", shown)
        : String.format(Locale.ROOT, "%.2f kohm", shown / 1000);
  }

  private static final class Tally {
    private int cases;
    private int leftAtFirst;
    private int left;
    private int groups;
    private int measurements;
    private int all;
    private int leftByPlan;

    void begin(SegmentDiagnosis diagnosis) {
      cases++;
      leftAtFirst += faults(diagnosis);
      all += faults(diagnosis) + diagnosis.excluded();
    }

    void end(SegmentDiagnosis diagnosis, int readings) {
      left += faults(diagnosis);
      groups += diagnosis.candidates().size();
      measurements += readings;
    }

    void endOfPlan(int faults) {
      leftByPlan += faults;
    }

    private static int faults(SegmentDiagnosis diagnosis) {
      return diagnosis.candidates().stream().mapToInt(one -> one.faults().size()).sum();
    }

    @Override
    public String toString() {
      return String.format(
          Locale.ROOT,
          "%d cases of %.1f faults: %.1f left after two readings at the head unit, %.1f in %.2f"
              + " groups after %.1f measurements in all; the plan leaves %.1f",
          cases,
          (double) all / cases,
          (double) leftAtFirst / cases,
          (double) left / cases,
          (double) groups / cases,
          (double) measurements / cases,
          (double) leftByPlan / cases);
    }
  }
}
