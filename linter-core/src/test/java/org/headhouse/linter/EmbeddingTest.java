package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TimeZone;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.headhouse.linter.report.JsonLinesReport;
import org.headhouse.linter.report.SarifReport;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the page on embedding shows is compiled and run here, and what it promises is true. */
class EmbeddingTest {
  private static final Path PAGE = Path.of("docs/embedding.md");
  private static final Path THIS = Path.of("src/test/java/org/headhouse/linter/EmbeddingTest.java");
  private static final Path FAULTY = Path.of("../sample-sites/faulty");
  private static final String SITE = Example.SITE.replace("site: example", "site: alder-brook");
  private static final String GAP = SITE.replace("address: 3", "address: 4");

  @TempDir private Path folder;

  static List<String> examples() throws IOException {
    return Pattern.compile("<!-- example: (.*?) -->\n```java\n")
        .matcher(Files.readString(PAGE))
        .results()
        .map((MatchResult match) -> match.group(1))
        .toList();
  }

  @Test
  void everyBlockOfJavaIsAnExample() throws IOException {
    assertThat(examples()).hasSizeGreaterThan(8).doesNotHaveDuplicates();
    assertThat(Files.readString(PAGE).split("```java\n", -1)).hasSize(1 + examples().size());
  }

  @ParameterizedTest
  @MethodSource("examples")
  void theExampleIsTheOneThatIsCompiledHere(String name) throws IOException {
    String shown =
        Files.readString(PAGE)
            .split("<!-- example: " + name + " -->\n```java\n", 2)[1]
            .split("```\n", 2)[0];
    String compiled =
        Files.readString(THIS)
            .split("// " + name + ": from here\n", 2)[1]
            .split(" *// to here\n", 2)[0];
    assertThat(compiled.replace("private static final class", "final class"))
        .isEqualToNormalizingWhitespace(shown);
  }

  @Test
  void aText() throws IOException {
    String text = GAP;
    List<String> lines = new ArrayList<>();
    // text: from here
    SiteLinter linter = SiteLinter.builder().build();
    CheckReport report = linter.checkText("alder-brook.yaml", text);
    for (Result result : report.at(Level.WARNING)) {
      lines.add(TextReport.headline(result));
    }
    boolean passed = report.passes(Level.ERROR);
    // to here
    assertThat(passed).isFalse();
    assertThat(lines).singleElement().asString().startsWith("alder-brook.yaml:25:14: error: no");
  }

  @Test
  void files() throws IOException {
    Files.createDirectory(folder.resolve("sites"));
    Files.writeString(folder.resolve("sites/alder-brook.yaml"), GAP);
    Files.writeString(folder.resolve("linter.yaml"), "{format: 1, rule-set: 1}\n");
    Files.writeString(folder.resolve("device-types.yaml"), "{format: 1, device-types: []}\n");
    // files: from here
    SiteLinter linter =
        SiteLinter.builder()
            .policy(folder.resolve("linter.yaml"))
            .deviceTypes(folder.resolve("device-types.yaml"))
            .threads(4)
            .build();
    CheckReport report = linter.checkFiles(List.of(folder.resolve("sites/alder-brook.yaml")));
    try (OutputStream out = Files.newOutputStream(folder.resolve("results.sarif"))) {
      new SarifReport(report.rules()).write(report.results(), report.notifications(), out);
    }
    // to here
    assertThat(report.at(Level.ERROR)).extracting(Result::rule).contains("address.gap");
    assertThat(folder.resolve("results.sarif")).content().contains("address.gap");
  }

  @Test
  void aFolder() throws IOException {
    SiteLinter linter = SiteLinter.builder().threads(3).build();
    Files.createDirectories(folder.resolve("sites/north"));
    Files.writeString(folder.resolve("sites/alder-brook.yaml"), GAP);
    Files.writeString(folder.resolve("sites/north/example.yml"), Example.SITE);
    Files.writeString(folder.resolve("sites/notes.txt"), "no site");
    Files.writeString(folder.resolve("sites/.hidden.yaml"), "no site");
    Files.createSymbolicLink(
        folder.resolve("sites/leads-out.yaml"), Files.createFile(folder.resolve("other.yaml")));
    Map<String, Boolean> passed = new LinkedHashMap<>();
    // folder: from here
    List<SiteInput> inputs = SiteInput.in(folder.resolve("sites"));
    CheckReport whole =
        linter.checkEach(
            inputs.stream(), (path, report) -> passed.put(path, report.passes(Level.ERROR)));
    // to here
    String sites = folder.toString().replace('\\', '/') + "/sites/";
    assertThat(passed)
        .containsExactly(
            Map.entry(sites + "alder-brook.yaml", false),
            Map.entry(sites + "leads-out.yaml", false),
            Map.entry(sites + "north/example.yml", true));
    assertThat(whole.failures())
        .extracting(Notification::file)
        .containsExactly(sites + "leads-out.yaml");
    assertThat(whole.passes(Level.ERROR)).isFalse();
    Path none = Files.createDirectory(folder.resolve("none"));
    assertThatThrownBy(() -> SiteInput.in(none))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("none matches");
    assertThatThrownBy(() -> SiteInput.in(folder.resolve("missing")))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("which does not exist");
  }

  /** Two sites that clash are each sound alone. */
  @Test
  void whatComesOfSeveralSitesIsInTheReportAtTheEnd() throws IOException {
    SiteLinter linter = SiteLinter.builder().build();
    List<CheckReport> alone = new ArrayList<>();
    CheckReport whole =
        linter.checkEach(
            Stream.of(
                SiteInput.text("a/example.yaml", Example.SITE),
                SiteInput.text("b/example.yaml", Example.SITE)),
            (path, report) -> alone.add(report));
    assertThat(alone).hasSize(2).allMatch(report -> report.passes(Level.NOTE));
    assertThat(whole.results()).extracting(Result::rule).contains("site.duplicate-id");
    assertThat(whole.units()).isEqualTo(alone.stream().mapToInt(CheckReport::units).sum());
  }

  @Test
  void json() throws IOException {
    CheckReport report = Checks.of(GAP);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    // json: from here
    new JsonLinesReport().write(report.results(), report.notifications(), out);
    // to here
    List<String> rules = new ArrayList<>();
    for (String line : out.toString(UTF_8).lines().toList()) {
      rules.add(new ObjectMapper().readTree(line).get("rule").textValue());
    }
    assertThat(rules)
        .containsExactlyElementsOf(report.results().stream().map(Result::rule).toList());
  }

  /** A letter beyond the basic plane is one code point and two units. */
  @Test
  void columnsOfAnEditor() throws IOException {
    String text =
        SITE.replace(
            "{at: Propagation, readings: [light,", "{at: \"\ud83c\udf31\", readings: [lightt,");
    Result result =
        SiteLinter.builder().build().checkText("alder-brook.yaml", text).results().stream()
            .filter(one -> one.rule().startsWith("schema."))
            .findFirst()
            .orElseThrow();
    // utf-16: from here
    SourceText source = new SourceText("alder-brook.yaml", text);
    Region region = result.location().region();
    int line = source.offset(region.startLine(), 1);
    int start = source.offset(region.startLine(), region.startColumn());
    int end = source.offset(region.endLine(), region.endColumn());
    String marked =
        (region.startLine() - 1) + ":" + (start - line) + " " + text.substring(start, end);
    // to here
    String written = text.lines().toList().get(3);
    assertThat(marked).isEqualTo("3:" + written.indexOf("lightt") + " lightt");
    assertThat(region.startColumn() - 1).isEqualTo(written.indexOf("lightt") - 1);
  }

  @Test
  void schemas() throws IOException {
    // schemas: from here
    String schema = SiteLinter.schemas().get("site.schema.json");
    // to here
    assertThat(new ObjectMapper().readTree(schema).at("/properties/chain").isObject()).isTrue();
    assertThat(SiteLinter.schemas()).hasSize(3);
  }

  @Test
  void site() throws IOException {
    SiteLinter linter = SiteLinter.builder().build();
    String text = SITE;
    Map<String, Region> places = new LinkedHashMap<>();
    // site: from here
    Optional<Site> site = linter.site(SiteInput.text("alder-brook.yaml", text));
    for (Unit unit : site.orElseThrow().units()) {
      places.put(unit.name().orNull(), unit.address().place().region());
    }
    // to here
    List<String> lines = text.lines().toList();
    assertThat(places.keySet()).containsExactly("Propagation", "Seedling North", "Hardening Bay");
    assertThat(places.values())
        .allSatisfy(
            place -> assertThat(lines.get(place.startLine() - 1)).startsWith("    address: "))
        .allSatisfy(
            place -> assertThat(place.startColumn()).isEqualTo("    address: ".length() + 1));
    assertThat(linter.site(SiteInput.text("alder-brook.yaml", "a: [b"))).isEmpty();
  }

  private static String text(long number) {
    return Example.SITE.replace("site: example", "site: site-" + number);
  }

  @Test
  void aStream() throws IOException {
    SiteLinter linter = SiteLinter.builder().threads(2).build();
    AtomicInteger progress = new AtomicInteger();
    int number = 3000;
    // stream: from here
    Stream<SiteInput> inputs =
        LongStream.range(0, number).mapToObj(i -> SiteInput.text("site-" + i + ".yaml", text(i)));
    CheckReport report = linter.check(inputs, files -> progress.set(files));
    // to here
    assertThat(report.results()).isEmpty();
    assertThat(report.files()).isEqualTo(number);
    assertThat(progress).hasValue(number);
  }

  @Test
  void figures() throws IOException {
    SiteLinter linter = SiteLinter.builder().build();
    String text = SITE;
    List<Double> metres = new ArrayList<>();
    // figures: from here
    List<Notification> troubles =
        linter.figures(
            Stream.of(SiteInput.text("alder-brook.yaml", text)),
            site -> metres.add(site.segments().get(0).lengthMetres()));
    // to here
    assertThat(troubles).isEmpty();
    assertThat(metres).containsExactly(100.0);
  }

  @Test
  void fix() throws IOException {
    SiteLinter linter = SiteLinter.builder().build();
    Path file = folder.resolve("alder-brook.yaml");
    Files.writeString(file, GAP);
    Map<String, byte[]> mended = new HashMap<>();
    // fix: from here
    linter.fix(
        Stream.of(SiteInput.file(file)),
        FixKind.SAFE,
        fixed -> {
          if (fixed.isChanged()) {
            mended.put(fixed.path(), fixed.after());
          }
        });
    // to here
    assertThat(mended.values())
        .singleElement()
        .satisfies(after -> assertThat(after).asString().isEqualTo(SITE));
    assertThat(file).hasContent(GAP);
  }

  // rule: from here
  private static final class TitleWanted implements SiteRule {
    private static final RuleDescriptor DESCRIPTOR =
        RuleDescriptor.of("nursery.title", "A site has a title.", Level.WARNING);

    @Override
    public RuleDescriptor descriptor() {
      return DESCRIPTOR;
    }

    @Override
    public void check(Site site, RuleContext context) {
      if (site.title().isMissing()) {
        context.report(
            site.id().place(),
            new Message(
                "the site has no title",
                "the people at the nursery do not know it by its id",
                "add title: with the name of the nursery"));
      }
    }
  }

  // to here

  @Test
  void ownRule() throws IOException {
    String text = SITE;
    // own-rule: from here
    SiteLinter linter = SiteLinter.builder().rule(new TitleWanted()).build();
    CheckReport report = linter.checkText("alder-brook.yaml", text);
    // to here
    assertThat(report.results()).extracting(Result::rule).containsExactly("nursery.title");
    assertThat(linter.page("nursery.title")).isEmpty();
    assertThat(linter.page("address.gap")).isPresent();
    assertThat(linter.page("no.such")).isEmpty();
  }

  @Test
  void dayAndLimits() throws IOException {
    // limits: from here
    SiteLinter linter =
        SiteLinter.builder()
            .clock(Clock.fixed(Instant.parse("2026-05-04T10:00:00Z"), ZoneOffset.UTC))
            .limits(new Limits(64 * 1024, 20, 10_000))
            .build();
    // to here
    assertThat(linter.checkText("alder-brook.yaml", " ".repeat(64 * 1024 + 1)).results())
        .extracting(Result::rule)
        .containsExactly("file.too-large");
    String until = "suppressions: [{rule: address.gap, justification: Later., until: %s}]\n";
    assertThat(
            linter
                .checkText("alder-brook.yaml", GAP + until.formatted("2026-05-04"))
                .at(Level.NOTE))
        .isEmpty();
    assertThat(
            linter
                .checkText("alder-brook.yaml", GAP + until.formatted("2026-05-03"))
                .at(Level.NOTE))
        .isNotEmpty();
  }

  private static String trouble(Path folder) {
    // errors: from here
    SiteLinter linter;
    try {
      linter = SiteLinter.builder().policy(folder.resolve("linter.yaml")).build();
    } catch (IOException unreadable) {
      return "the policy cannot be read: " + unreadable.getMessage();
    }
    CheckReport report = linter.checkFiles(List.of(folder.resolve("missing.yaml")));
    for (Notification trouble : report.notifications()) {
      return TextReport.headline(trouble) + " " + trouble.cause();
    }
    // to here
    return "";
  }

  @Test
  void errors() throws IOException {
    assertThat(trouble(folder)).startsWith("the policy cannot be read: ");
    Files.writeString(folder.resolve("linter.yaml"), "{format: 1, rule-set: 1}\n");
    assertThat(trouble(folder))
        .contains("missing.yaml: the file cannot be read: it does not exist ")
        .contains(NoSuchFileException.class.getName());
  }

  /** The faulty samples give the most to tell; they are checked alone, and then in any company. */
  @Test
  void theCheckOfOneSiteIsAFunctionOfWhatThePageSays() throws IOException {
    List<SiteInput> inputs = new ArrayList<>();
    try (Stream<Path> files = Files.walk(FAULTY.resolve("sites"))) {
      files
          .filter(file -> file.toString().endsWith(".yaml"))
          .sorted()
          .forEach(file -> inputs.add(SiteInput.file(file)));
    }
    Map<String, List<Result>> alone = new HashMap<>();
    for (SiteInput input : inputs) {
      alone.put(
          input.path(),
          ofSites(linter(1).check(Stream.of(input))).getOrDefault(input.path(), List.of()));
    }
    assertThat(alone.values().stream().mapToInt(List::size).sum()).isGreaterThan(60);
    alone.values().removeIf(List::isEmpty);
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("tr-TR"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      for (int run = 0; run < 6; run++) {
        Collections.shuffle(inputs, new Random(run));
        assertThat(ofSites(linter(1 + run % 3).check(inputs.stream()))).isEqualTo(alone);
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }

  private static SiteLinter linter(int threads) throws IOException {
    return SiteLinter.builder()
        .policy(FAULTY.resolve("linter.yaml"))
        .deviceTypes(FAULTY.resolve("device-types.yaml"))
        .clock(Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC))
        .threads(threads)
        .build();
  }

  /** By file, without what compares sites. */
  private static Map<String, List<Result>> ofSites(CheckReport report) {
    Map<String, List<Result>> bySite = new HashMap<>();
    for (Result result : report.results()) {
      if (result.location().file().contains("/sites/")
          && result.related().stream()
              .map(related -> related.location().file())
              .allMatch(
                  file -> !file.contains("/sites/") || file.equals(result.location().file()))) {
        bySite.computeIfAbsent(result.location().file(), file -> new ArrayList<>()).add(result);
      }
    }
    return bySite;
  }
}
