package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.headhouse.linter.check.CleanFiles;
import org.headhouse.linter.check.FileOutcome;
import org.headhouse.linter.report.SarifReport;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Checks that know which files an earlier one found clean, through the façade. */
class UnchangedSitesTest {
  private static final Path SAMPLES = Path.of("..", "sample-sites");
  private static final byte[] SECRET = new byte[32];
  private static final SiteInput NORTH = SiteInput.text("north/example.yaml", Example.SITE);
  private static final SiteInput SOUTH = SiteInput.text("south/example.yaml", Example.SITE);

  /** Has a result, which a check that takes it for clean does not tell. */
  private static final SiteInput BROKEN =
      SiteInput.text("broken/example.yaml", Example.with("address: 3", "address: 4"));

  @TempDir private Path folder;

  /** Opens what one check leaves for the next. */
  private static final class Memory implements Function<String, CleanFiles> {
    private final List<String> validities = new ArrayList<>();
    private CleanFiles last = new CleanFiles(SECRET, "", new byte[0]);

    @Override
    public CleanFiles apply(String validity) {
      validities.add(validity);
      last = new CleanFiles(SECRET, validity, last.sealed());
      return last;
    }

    String text() {
      return new String(last.sealed(), UTF_8);
    }
  }

  private static SiteLinter.Builder builder() {
    return on("2026-03-14");
  }

  private static SiteLinter.Builder on(String day) {
    return SiteLinter.builder()
        .clock(Clock.fixed(Instant.parse(day + "T12:00:00Z"), ZoneOffset.UTC));
  }

  private static String sarif(SiteLinter.Builder builder, SiteInput... inputs) throws IOException {
    CheckReport report = builder.build().check(Stream.of(inputs));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write((report.files() + " files, " + report.units() + " units\n").getBytes(UTF_8));
    new SarifReport(report.rules())
        .write(report.results(), report.absent(), report.notifications(), out);
    return out.toString(UTF_8);
  }

  private static SiteInput[] files(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile)
          .sorted()
          .map(SiteInput::file)
          .toArray(SiteInput[]::new);
    }
  }

  private static SiteLinter.Builder samples(Path home) {
    return builder()
        .threads(2)
        .policy(home.resolve("linter.yaml"))
        .deviceTypes(home.resolve("device-types.yaml"))
        .withoutBaseline();
  }

  @Test
  void everySampleGivesTheSameColdAndKept() throws IOException {
    for (Path home : List.of(SAMPLES, SAMPLES.resolve("faulty"))) {
      SiteInput[] sites = files(home.resolve("sites"));
      assertThat(sites).hasSizeGreaterThan(8);
      String cold = sarif(samples(home), sites);
      Memory memory = new Memory();
      for (int round = 0; round < 3; round++) {
        assertThat(sarif(samples(home).cleanFiles(memory), sites)).isEqualTo(cold);
      }
    }
  }

  /** The good samples are what most repositories are full of. */
  @Test
  void everyGoodSampleIsKept() throws IOException {
    Memory memory = new Memory();
    SiteInput[] sites = files(SAMPLES.resolve("sites"));
    CheckReport report = samples(SAMPLES).cleanFiles(memory).build().check(Stream.of(sites));
    List<String> told = report.results().stream().map(one -> one.location().file()).toList();
    for (SiteInput site : sites) {
      assertThat(memory.text().contains(site.path() + "\t"))
          .as(site.path())
          .isEqualTo(!told.contains(site.path()));
    }
  }

  /** Whatever way the id is written. */
  @Test
  void aNewDoubleOfAKeptIdIsReported() throws IOException {
    for (String id : List.of("example", "'example'", "\"ex\\u0061mple\"", "&id example")) {
      SiteInput first =
          SiteInput.text("north/example.yaml", Example.with("site: example", "site: " + id));
      Memory memory = new Memory();
      sarif(builder().cleanFiles(memory), first);
      assertThat(memory.text()).contains("north/example.yaml");
      CheckReport kept = builder().cleanFiles(memory).build().check(Stream.of(first, SOUTH));
      assertThat(kept.results())
          .singleElement()
          .satisfies(
              result -> {
                assertThat(result.rule()).isEqualTo("site.duplicate-id");
                assertThat(result.location().file()).isEqualTo("south/example.yaml");
                assertThat(result.related().get(0).location().file())
                    .isEqualTo("north/example.yaml");
              });
      assertThat(sarif(builder().cleanFiles(memory), first, SOUTH))
          .isEqualTo(sarif(builder(), first, SOUTH));
      // Now both are kept: what two files clash about is told of neither alone.
      assertThat(sarif(builder().cleanFiles(memory), SOUTH, first))
          .isEqualTo(sarif(builder(), SOUTH, first));
    }
  }

  /** The known result is no reason to stop looking. */
  @Test
  void aResultOfTheBaselineIsFoundAgain() throws IOException {
    Path baseline =
        Files.writeString(
            folder.resolve("baseline.jsonl"),
            """
            {"baseline-format":1}
            {"file":"broken/example.yaml","site":"example","at":"chain","rule":"address.gap","unit":"Hardening Bay"}
            """);
    Memory memory = new Memory();
    String cold = sarif(builder().baseline(baseline).shownFrom(folder), BROKEN);
    assertThat(cold).contains("\"unchanged\"");
    for (int round = 0; round < 2; round++) {
      assertThat(sarif(builder().baseline(baseline).shownFrom(folder).cleanFiles(memory), BROKEN))
          .isEqualTo(cold);
    }
    assertThat(memory.text()).doesNotContain("broken/example.yaml");
  }

  /** A suppression with a last day has nothing to say until the day after. */
  @Test
  void aSuppressionEndsOnItsDay() throws IOException {
    SiteInput site =
        SiteInput.text(
            "broken/example.yaml",
            Example.with("address: 3", "address: 4")
                + """
                suppressions:
                  - {rule: address.gap, justification: In store., until: 2026-03-14}
                """);
    Memory memory = new Memory();
    for (String day : List.of("2026-03-14", "2026-03-14", "2026-03-15", "2026-03-14")) {
      assertThat(sarif(on(day).cleanFiles(memory), site)).isEqualTo(sarif(on(day), site));
    }
    assertThat(memory.text()).doesNotContain("broken/example.yaml");
  }

  /** What a check takes for clean, once something that outcomes depend on is another. */
  private static List<Result> results(SiteLinter.Builder before, SiteLinter.Builder after)
      throws IOException {
    Memory memory = new Memory();
    before.cleanFiles(memory).build().checkText("example.yaml", Example.SITE);
    CleanFiles forged = new CleanFiles(SECRET, memory.validities.get(0), new byte[0]);
    forged.outcome(
        BROKEN.path(),
        BROKEN.content().read(Integer.MAX_VALUE),
        () -> new FileOutcome(List.of(), List.of(), List.of(), 3));
    return after
        .cleanFiles(validity -> new CleanFiles(SECRET, validity, forged.sealed()))
        .build()
        .check(Stream.of(BROKEN))
        .results()
        .stream()
        .filter(result -> result.location().file().equals(BROKEN.path()))
        .toList();
  }

  private static String rules(String written) {
    return "format: 1\nrule-set: 1\nrules: {" + written + "}\n";
  }

  @Test
  void aFileIsCheckedAgainOnceAnythingElseDiffers() throws IOException {
    SiteInput policy = SiteInput.text("a.yaml", rules("address.gap: {level: note}"));
    SiteInput other = SiteInput.text("a.yaml", rules("address.gap: {level: error}"));
    SiteInput parameter =
        SiteInput.text("a.yaml", rules("bias.weak: {parameters: {margin-percent: 5}}"));
    SiteInput types = SiteInput.text("a.yaml", "format: 1\ndevice-types: [{id: eight-way}]\n");
    SiteInput none = SiteInput.text("a.yaml", "");
    assertThat(results(builder(), builder())).isEmpty();
    assertThat(results(builder().policy(policy), builder().policy(policy))).isEmpty();
    assertThat(results(builder(), builder().threads(3).withoutBaseline())).isEmpty();
    assertThat(results(builder(), on("2026-03-15"))).isNotEmpty();
    assertThat(results(builder(), builder().policy(policy))).isNotEmpty();
    assertThat(results(builder().policy(policy), builder())).isNotEmpty();
    assertThat(results(builder().policy(policy), builder().policy(other))).isNotEmpty();
    assertThat(results(builder().policy(policy), builder().policy(parameter))).isNotEmpty();
    assertThat(results(builder(), builder().deviceTypes(types))).isNotEmpty();
    assertThat(results(builder(), builder().deviceTypes(none))).isNotEmpty();
    // A file may be given by mistake for what it is not.
    assertThat(results(builder().policy(types), builder().deviceTypes(types))).isNotEmpty();
    assertThat(results(builder(), builder().limits(new Limits(1 << 19, 64, 200_000)))).isNotEmpty();
  }

  private static final class House implements SiteRule {
    @Override
    public RuleDescriptor descriptor() {
      return RuleDescriptor.of("house.rule", "It looks at anything.", Level.NOTE);
    }

    @Override
    public void check(Site site, RuleContext context) {
      // What another rule looks at is not known.
    }
  }

  /** Rules of other jars and an earlier state are more than a file and its settings. */
  @Test
  void whereMoreIsLookedAtNothingIsKept() throws IOException {
    Memory memory = new Memory();
    builder().rule(new House()).cleanFiles(memory).build().check(Stream.of(NORTH));
    builder()
        .before(SiteState.of(Stream.of(), null))
        .cleanFiles(memory)
        .build()
        .check(Stream.of(NORTH));
    assertThat(memory.validities).isEmpty();
    builder().cleanFiles(memory).build().check(Stream.of(NORTH));
    assertThat(memory.validities).hasSize(1);
  }

  /** A linter may work for longer than a day. */
  @Test
  void eachCheckAsksForItsOwnDay() throws IOException {
    Memory memory = new Memory();
    Instant[] now = {Instant.parse("2026-03-14T12:00:00Z")};
    Clock clock =
        new Clock() {
          @Override
          public ZoneOffset getZone() {
            return ZoneOffset.UTC;
          }

          @Override
          public Clock withZone(ZoneId zone) {
            throw new UnsupportedOperationException("one zone is enough");
          }

          @Override
          public Instant instant() {
            return now[0];
          }
        };
    SiteLinter linter = SiteLinter.builder().clock(clock).cleanFiles(memory).build();
    linter.check(Stream.of(NORTH));
    now[0] = Instant.parse("2026-03-15T00:00:00Z");
    linter.check(Stream.of(NORTH));
    assertThat(memory.validities).doesNotHaveDuplicates().hasSize(2);
  }
}
