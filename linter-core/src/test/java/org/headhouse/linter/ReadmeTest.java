package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.headhouse.linter.site.Reading.LIGHT;
import static org.headhouse.linter.site.Reading.RAIN;
import static org.headhouse.linter.site.Reading.TEMPERATURE;
import static org.headhouse.linter.site.Reading.WIND_DIRECTION;
import static org.headhouse.linter.site.Reading.WIND_SPEED;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.headhouse.linter.baseline.Baseline;
import org.headhouse.linter.baseline.SitePaths;
import org.headhouse.linter.change.SiteChange;
import org.headhouse.linter.draft.Draft;
import org.headhouse.linter.draft.DraftSettings;
import org.headhouse.linter.draft.SiteUpdate;
import org.headhouse.linter.figures.SiteFigures;
import org.headhouse.linter.report.ChangeReport;
import org.headhouse.linter.report.FiguresReport;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.site.Gauge;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.Resistance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README and the pages that it leads to show is true. */
class ReadmeTest {
  private static final Path README = Path.of("../README.md");

  /** Those whose examples are proved here. */
  private static final List<Path> PAGES =
      Stream.concat(
              Stream.of(README),
              Stream.of(
                      "site-format",
                      "draft",
                      "figures",
                      "live-changes",
                      "repository",
                      "policy",
                      "fixing")
                  .map(name -> Path.of("docs", name + ".md")))
          .toList();

  /** It is run with the libraries of several BOMs. */
  private static final Path EMBEDDING_PROGRAM =
      Path.of("../linter-maven-plugin/src/it/program/src/main/java/example/program/Program.java");

  private static final int MOST_BYTES = 9000;
  private static final Path SAMPLES = Path.of("../sample-sites");

  @Test
  void theReadmeIsReadInOneSitting() throws IOException {
    assertThat(Files.size(README)).isLessThan(MOST_BYTES);
  }

  /** Every link to a file, and every page, so that none is left where nobody finds it. */
  @Test
  void theReadmeLeadsToEveryPage() throws IOException {
    List<Path> linked =
        Pattern.compile("\\]\\(([^)#:]+)[)#]")
            .matcher(Files.readString(README))
            .results()
            .map(match -> README.resolveSibling(match.group(1)).normalize())
            .toList();
    assertThat(linked).allSatisfy(one -> assertThat(one).exists());
    try (Stream<Path> pages = Files.list(Path.of("docs"))) {
      List<Path> unlinked =
          pages
              .map(page -> Path.of("../linter-core").resolve(page))
              .filter(page -> page.toString().endsWith(".md") && !linked.contains(page))
              .toList();
      assertThat(unlinked).containsExactly(Path.of("../linter-core/docs/lists.md"));
    }
  }

  /** The mistake that the README begins with is one of the faulty site. */
  @Test
  void theMistakeShownIsInTheFaultySite() throws IOException {
    assertThat(Files.readString(SAMPLES.resolve("faulty/sites/ferncombe.yaml")))
        .containsSubsequence(example("broken").split(" *…\n", -1));
  }

  @Test
  void theExamplesAreClean() throws IOException {
    CheckReport report =
        SiteLinter.builder()
            .policy(SiteInput.text("linter.yaml", example("policy")))
            .deviceTypes(SiteInput.text("device-types.yaml", example("device-types")))
            .build()
            .checkText("alder-brook.yaml", example("site"));
    assertThat(report.results()).isEmpty();
    assertThat(report.notifications()).isEmpty();
  }

  @Test
  void theRecordIsSound() throws IOException {
    SiteLinter linter =
        SiteLinter.builder()
            .deviceTypes(SiteInput.text("device-types.yaml", example("device-types")))
            .build();
    String proved =
        example("site")
            .replaceFirst("stage: planned .*\n", Matcher.quoteReplacement(example("record")));
    assertThat(proved).contains("stage: commissioned");
    assertThat(linter.checkText("alder-brook.yaml", proved).results()).isEmpty();
  }

  @Test
  void theConventionsOfACustomerAreRead() throws IOException {
    SiteLinter linter =
        SiteLinter.builder().policy(SiteInput.text("linter.yaml", example("conventions"))).build();
    assertThat(linter.checkText("alder-brook.yaml", example("site")).at(Level.WARNING)).isEmpty();
    String other =
        example("site").replace("Hardening Bay", "Bay-A").replace("address: 3", "address: 105");
    assertThat(linter.checkText("alder-brook.yaml", other).at(Level.WARNING))
        .extracting(Result::rule)
        .containsExactly("name.pattern", "address.kept-free");
  }

  @Test
  void theSettingsOfMavenAreThoseOfTheSampleSites() throws IOException {
    assertThat(SAMPLES.resolve(".mvn/jvm.config")).hasContent(example("jvm-config"));
  }

  @Test
  void theProgramIsTheOneThatIsCompiledHere(@TempDir Path folder) throws IOException {
    String program =
        Files.readString(Path.of("src/test/java/org/headhouse/linter/ReadmeTest.java"))
            .split("// from here\n", 2)[1]
            .split(" *// to here", 2)[0];
    assertThat(program.replace("folder.resolve", "Path.of"))
        .isEqualToNormalizingWhitespace(example("java"));
    assertThat(Files.readString(EMBEDDING_PROGRAM))
        .containsIgnoringWhitespaces("// from here" + example("java") + "// to here");
    Files.createDirectory(folder.resolve("sites"));
    Files.writeString(folder.resolve("sites/alder-brook.yaml"), example("site"));
    Files.writeString(folder.resolve("device-types.yaml"), example("device-types"));
    PrintStream console = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    System.setOut(new PrintStream(printed, true, UTF_8));
    try {
      program(folder);
    } finally {
      System.setOut(console);
    }
    assertThat(printed.toString(UTF_8)).isEqualTo("passed\n");
  }

  @SuppressWarnings("SystemOut")
  private static void program(Path folder) throws IOException {
    // from here
    SiteLinter linter =
        SiteLinter.builder().deviceTypes(folder.resolve("device-types.yaml")).build();
    CheckReport report = linter.checkFiles(List.of(folder.resolve("sites/alder-brook.yaml")));
    for (Result result : report.at(Level.WARNING)) {
      System.out.println(TextReport.headline(result));
    }
    for (Notification failure : report.failures()) {
      System.out.println(TextReport.headline(failure));
    }
    System.out.println(report.passes(Level.ERROR) ? "passed" : "failed");
    // to here
  }

  @Test
  void theBaselineShownIsThatOfTheFaultySite() throws IOException {
    Path folder = SAMPLES.resolve("faulty");
    String file = "sites/ferncombe.yaml";
    CheckReport report =
        SiteLinter.builder()
            .deviceTypes(folder.resolve("device-types.yaml"))
            .build()
            .check(Stream.of(SiteInput.file(folder.resolve(file), file)));
    ByteArrayOutputStream written = new ByteArrayOutputStream();
    Baseline.empty(new SitePaths(folder, folder))
        .renewed(report.results(), Set.of(file), true)
        .write(written);
    assertThat(written.toString(UTF_8)).startsWith(example("baseline", "output", "json"));
    assertThat(written.toString(UTF_8).lines()).hasSize(1 + 6);
  }

  @Test
  void theFiguresShownAreThoseOfTheSampleSite() throws IOException {
    SiteLinter linter =
        SiteLinter.builder().deviceTypes(SAMPLES.resolve("device-types.yaml")).build();
    ByteArrayOutputStream written = new ByteArrayOutputStream();
    try (FiguresReport report = new FiguresReport(written)) {
      linter.figures(
          Stream.of(SiteInput.file(SAMPLES.resolve("sites/pellbrook-west/site.yaml"))),
          report::add);
    }
    assertThat(written.toString(UTF_8))
        .isEqualToIgnoringWhitespace(example("figures", "output", "json"));
  }

  private static SiteLinter typed() throws IOException {
    return SiteLinter.builder()
        .deviceTypes(SiteInput.text("device-types.yaml", example("device-types")))
        .build();
  }

  private static String drafted(SiteLinter linter) throws IOException {
    DraftSettings settings =
        new DraftSettings(
            "elm-row",
            null,
            List.of(LIGHT, TEMPERATURE, WIND_SPEED, WIND_DIRECTION, RAIN),
            9600,
            Parity.EVEN,
            new Gauge.Awg(24, "24 AWG"),
            true,
            new Resistance(120, "120 ohm"),
            null);
    Draft draft = linter.draft(SiteInput.text("units.csv", example("list")), settings);
    assertThat(draft).isInstanceOf(Draft.Made.class);
    return ((Draft.Made) draft).text();
  }

  @Test
  void theDraftShownIsThatOfTheList() throws IOException {
    SiteLinter linter = typed();
    String text = drafted(linter);
    assertThat(linter.checkText("elm-row.yaml", text).at(Level.WARNING)).isEmpty();
    assertThat(text).containsSubsequence(example("draft", "output", "yaml").split("…\n", -1));
  }

  /** Each side of the difference stands in its text. */
  @Test
  void theDifferenceShownIsThatOfTheLaterList() throws IOException {
    SiteLinter linter = typed();
    String before = drafted(linter);
    SiteUpdate update =
        linter.update(
            SiteInput.text("units.csv", example("later-list")),
            SiteInput.text("elm-row.yaml", before));
    assertThat(update).isInstanceOf(SiteUpdate.Made.class);
    String after = new String(((SiteUpdate.Made) update).after(), UTF_8);
    String shown = example("later-diff", "output", "diff").split("…\n", 2)[1];
    assertThat(before).contains(side(shown, '-'));
    assertThat(after).contains(side(shown, '+'));
  }

  private static String side(String diff, char mark) {
    StringBuilder side = new StringBuilder();
    diff.lines()
        .filter(line -> line.charAt(0) == ' ' || line.charAt(0) == mark)
        .forEach(line -> side.append(line, 1, line.length()).append('\n'));
    return side.toString();
  }

  @Test
  void theChangesShownAreThoseOfTheSampleSite() throws IOException {
    List<SiteChange> changes =
        Checks.linter().changes(state("changed/before"), state("changed/after"));
    assertThat(ChangeReport.text("changed/before", changes))
        .containsExactlyElementsOf(example("changes", "output", "text").lines().toList());
  }

  /** The page on changes shows the other sample. */
  @Test
  void theExchangeShownIsThatOfTheSampleSite() throws IOException {
    List<SiteChange> changes =
        Checks.linter().changes(state("changed/before"), state("changed/exchanged"));
    assertThat(Files.readString(Path.of("docs/changes.md")))
        .contains(
            "<!-- output: exchange -->\n```text\n"
                + String.join("\n", ChangeReport.text("changed/before", changes))
                + "\n```");
  }

  @Test
  void theEditedSiteIsFixedAsTheReadmeSays() throws IOException {
    SiteLinter.Builder builder =
        SiteLinter.builder().deviceTypes(SAMPLES.resolve("changed/device-types.yaml"));
    SiteLinter linter = builder.build();
    Path file = SAMPLES.resolve("changed/edited/hazelgate.yaml");
    SiteInput edited = SiteInput.file(file, "sites/hazelgate.yaml");
    assertThat(linter.check(Stream.of(edited)).results().stream().map(TextReport::inOneLine))
        .containsExactlyElementsOf(
            example("edited", "output", "text").lines().map(String::strip).toList());
    for (SiteLinter each : List.of(linter, builder.before(state("changed/before")).build())) {
      assertThat(new String(Fixing.outcome(each, edited, FixKind.SAFE).after(), UTF_8))
          .isEqualTo(
              Files.readString(file)
                  .replace(
                      "[Packing Shed, Tomatoes North, ",
                      "[Packing Shed, Tomatoes North, Young Plants, "));
      assertThat(Fixing.outcome(each, edited, FixKind.PROPOSED).after())
          .isEqualTo(Files.readAllBytes(SAMPLES.resolve("changed/after/hazelgate.yaml")));
    }
  }

  private static SiteState state(String folder) throws IOException {
    String file = folder + "/hazelgate.yaml";
    return SiteState.of(
        Stream.of(SiteInput.file(SAMPLES.resolve(file), file)),
        SiteInput.file(SAMPLES.resolve("changed/device-types.yaml")));
  }

  /** What the defaults say can be left out of the units. */
  @Test
  void defaultsSayWhatUnitsHaveInCommon() throws IOException {
    String whole = example("site");
    String units = whole.substring(whole.indexOf("chain:"));
    for (String common :
        List.of(
            "    device-type: eight-way .*\n",
            "    device-type: eight-way\n",
            "    comm-module: fitted .*\n",
            "    comm-module: fitted\n",
            "    conductors: \\[A, B\\]\n",
            "    outdoor: .*\n",
            "    vents: roof\n",
            "    on-stale-readings: close.*\n")) {
      units = units.replaceAll(common, "");
    }
    String brief = whole.substring(0, whole.indexOf("chain:")) + example("defaults") + "\n" + units;
    assertThat(brief.lines().count()).isLessThan(whole.lines().count());
    SiteLinter linter =
        SiteLinter.builder()
            .deviceTypes(SiteInput.text("device-types.yaml", example("device-types")))
            .build();
    assertThat(linter.checkText("alder-brook.yaml", brief).results()).isEmpty();
    assertThat(figures(linter, brief)).isEqualTo(figures(linter, whole));
  }

  private static List<SiteFigures> figures(SiteLinter linter, String site) {
    List<SiteFigures> figures = new ArrayList<>();
    linter.figures(Stream.of(SiteInput.text("alder-brook.yaml", site)), figures::add);
    return figures;
  }

  private static String example(String name) throws IOException {
    return example(name, "example", "[a-z]+");
  }

  private static String example(String name, String mark, String language) throws IOException {
    Pattern block =
        Pattern.compile(
            "<!-- " + mark + ": " + name + " -->\n *```" + language + "\n(.*?) *```",
            Pattern.DOTALL);
    for (Path page : PAGES) {
      Matcher matcher = block.matcher(Files.readString(page));
      if (matcher.find()) {
        return matcher.group(1);
      }
    }
    throw new AssertionError("no page shows " + name);
  }
}
