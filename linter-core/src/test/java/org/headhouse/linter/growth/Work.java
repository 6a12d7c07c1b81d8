package org.headhouse.linter.growth;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.draft.DraftSettings;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.report.ChangeJson;
import org.headhouse.linter.report.ChangeReport;
import org.headhouse.linter.report.FiguresReport;
import org.headhouse.linter.report.JUnitReport;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.report.SarifReport;
import org.headhouse.linter.report.StyledLine;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.Reading;

/**
 * One thing that is done with an input, by the calling thread alone.
 *
 * @param bytes of the input
 */
record Work(int bytes, Job job) {
  private static final String POLICY = "format: 1\nrule-set: 1\n";

  private static final Console NOBODY =
      new Console() {
        @Override
        public void plain(String line) {}

        @Override
        public void found(Level level, StyledLine line) {}

        @Override
        public ParameterNames called() {
          return name -> name;
        }

        @Override
        public String rulePageCall(String rule) {
          return "";
        }

        @Override
        public void report(Level level, String line) {}
      };

  /** Anything that may fail to read. */
  @FunctionalInterface
  interface Job {
    void run() throws IOException;
  }

  void run() {
    try {
      job.run();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private static Work of(String input, Job job) {
    return new Work(input.getBytes(UTF_8).length, job);
  }

  private static SiteLinter.Builder linter() {
    return SiteLinter.builder().threads(1);
  }

  /** A site checked, and reported in all forms. */
  static Work check(String site) {
    return of(site, () -> report(linter().build().checkText("example.yaml", site)));
  }

  /** A site checked by what the policy has under {@code rules}. */
  static Work policy(String rules, String site) {
    return of(
        rules + site,
        () ->
            report(
                linter()
                    .policy(SiteInput.text("linter.yaml", POLICY + rules))
                    .build()
                    .checkText("example.yaml", site)));
  }

  /** A site checked with what is known of types. */
  static Work types(String types, String site) {
    return of(
        types + site,
        () ->
            report(
                linter()
                    .deviceTypes(SiteInput.text("device-types.yaml", types))
                    .build()
                    .checkText("example.yaml", site)));
  }

  /** Sites checked together. */
  static Work repository(Map<String, String> sites) {
    return of(String.join("", sites.values()), () -> report(linter().build().check(inputs(sites))));
  }

  private static Stream<SiteInput> inputs(Map<String, String> sites) {
    return new TreeMap<>(sites)
        .entrySet().stream().map(site -> SiteInput.text(site.getKey(), site.getValue()));
  }

  private static void report(CheckReport report) throws IOException {
    OutputStream nowhere = OutputStream.nullOutputStream();
    new SarifReport(report.rules())
        .write(report.results(), report.absent(), report.notifications(), nowhere);
    new JUnitReport(Level.ERROR).write(report.results(), report.notifications(), nowhere);
    ConsoleReport console = new ConsoleReport(NOBODY, Level.NOTE);
    console.print(report);
    console.printAbsent(report.absent());
  }

  /** A site compared with a baseline. */
  static Work baseline(String lines, String site) {
    return of(
        lines,
        () -> {
          Path folder = Files.createTempDirectory("baseline");
          Path file = Files.writeString(folder.resolve("linter-baseline.jsonl"), lines);
          try {
            report(linter().baseline(file).build().checkText("example.yaml", site));
          } finally {
            Files.delete(file);
            Files.delete(folder);
          }
        });
  }

  /** A site fixed as far as possible. */
  static Work fix(String site) {
    return of(
        site,
        () ->
            linter()
                .build()
                .fix(
                    Stream.of(SiteInput.text("example.yaml", site)),
                    FixKind.PROPOSED,
                    fixed -> {}));
  }

  /** The sheets and the figures of a site. */
  static Work sheets(String site) {
    return of(
        site,
        () -> {
          SiteLinter linter = linter().build();
          linter.sheets(
              Stream.of(SiteInput.text("example.yaml", site)),
              Measure.METRIC,
              Paper.A4,
              sheet -> {});
          try (FiguresReport figures = new FiguresReport(OutputStream.nullOutputStream())) {
            linter.figures(Stream.of(SiteInput.text("example.yaml", site)), figures::add);
          }
        });
  }

  /** Two states of a repository compared, and told in all forms. */
  static Work changes(Map<String, String> before, Map<String, String> after) {
    return of(
        String.join("", before.values()) + String.join("", after.values()),
        () -> {
          SiteState earlier = SiteState.of(inputs(before), null);
          var changes = linter().build().changes(earlier, SiteState.of(inputs(after), null));
          ChangeReport.text("before", changes);
          ChangeReport.markdown("before", changes);
          ChangeJson.write("before", changes, OutputStream.nullOutputStream());
          report(linter().before(earlier).build().check(inputs(after)));
        });
  }

  /** A site made of a list. */
  /** Rows of a list from a visit, without its first two. */
  static Work visit(String site, String rows) {
    String list = "what,where,acceptable,found,by,date,remark\nsite,example,,,,,\n" + rows;
    return of(
        list,
        () ->
            linter()
                .build()
                .visit(SiteInput.text("visit.csv", list), SiteInput.text("example.yaml", site)));
  }

  static Work draft(String list) {
    DraftSettings settings =
        new DraftSettings(
            "example",
            "Example",
            List.of(Reading.LIGHT, Reading.RAIN),
            9600,
            Parity.EVEN,
            Objects.requireNonNull(Quantities.gauge("24 AWG")),
            true,
            Objects.requireNonNull(Quantities.resistance("120 ohm")),
            Quantities.voltage("5 V"));
    return of(list, () -> linter().build().draft(SiteInput.text("units.csv", list), settings));
  }
}
