package org.headhouse.linter.cache;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.report.SarifReport;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Site;
import org.junit.jupiter.api.Test;

/** A check that uses what an earlier one found, through the façade. */
class UnchangedSitesTest {
  private static final Path FAULTY = Path.of("..", "sample-sites", "faulty");

  /** Counts the sites that it sees. */
  private static final class Counting implements SiteRule {
    private final AtomicInteger seen = new AtomicInteger();

    @Override
    public RuleDescriptor descriptor() {
      return RuleDescriptor.of("house.counting", "It counts.", Level.NOTE);
    }

    @Override
    public void check(Site site, RuleContext context) {
      seen.incrementAndGet();
    }
  }

  private final Counting counting = new Counting();

  private SiteLinter.Builder builder(KeptOutcomes kept, String day) {
    return SiteLinter.builder()
        .rule(counting)
        .clock(Clock.fixed(Instant.parse(day + "T12:00:00Z"), ZoneOffset.UTC))
        .keepingOutcomes(kept);
  }

  private static KeptOutcomes nextTime(KeptOutcomes kept) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    kept.write(out);
    return KeptOutcomes.of(out.toByteArray());
  }

  private int seen(SiteLinter linter) {
    counting.seen.set(0);
    linter.check(
        Stream.of(
            SiteInput.text("north/example.yaml", Example.SITE),
            SiteInput.text("south/example.yaml", Example.SITE)));
    return counting.seen.get();
  }

  @Test
  void everyFaultIsToldByteForByteTheSame() throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(FAULTY.resolve("sites"))) {
      files = all.filter(Files::isRegularFile).sorted().toList();
    }
    KeptOutcomes kept = KeptOutcomes.none();
    String first = sarif(faulty(kept), files);
    int sites = counting.seen.getAndSet(0);
    assertThat(sites).isGreaterThan(20);
    assertThat(sarif(faulty(nextTime(kept)), files)).isEqualTo(first);
    assertThat(counting.seen).hasValue(0);
  }

  private SiteLinter faulty(KeptOutcomes kept) throws IOException {
    return builder(kept, "2026-03-14")
        .threads(2)
        .policy(FAULTY.resolve("linter.yaml"))
        .deviceTypes(FAULTY.resolve("device-types.yaml"))
        .withoutBaseline()
        .build();
  }

  private static String sarif(SiteLinter linter, List<Path> files) throws IOException {
    CheckReport report = linter.checkFiles(files);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new SarifReport(report.rules())
        .write(report.results(), report.absent(), report.notifications(), out);
    return out.toString(UTF_8);
  }

  @Test
  void sitesAreCheckedAgainOnceAnythingElseDiffers() throws IOException {
    KeptOutcomes kept = KeptOutcomes.none();
    assertThat(seen(builder(kept, "2026-03-14").build())).isEqualTo(2);
    KeptOutcomes next = nextTime(kept);
    assertThat(seen(builder(next, "2026-03-14").build())).isZero();
    assertThat(seen(builder(next, "2026-03-15").build())).isEqualTo(2);
    assertThat(seen(builder(next, "2026-03-14").policy(policy("note")).build())).isEqualTo(2);
    assertThat(seen(builder(next, "2026-03-14").deviceTypes(types()).build())).isEqualTo(2);
    KeptOutcomes ofPolicy = KeptOutcomes.none();
    seen(builder(ofPolicy, "2026-03-14").policy(policy("note")).build());
    assertThat(seen(builder(nextTime(ofPolicy), "2026-03-14").policy(policy("error")).build()))
        .isEqualTo(2);
  }

  /** A file may be given by mistake for what it is not. */
  @Test
  void policyAndDeviceTypesAreNotTakenForEachOther() throws IOException {
    KeptOutcomes kept = KeptOutcomes.none();
    assertThat(seen(builder(kept, "2026-03-14").policy(types()).build())).isEqualTo(2);
    assertThat(seen(builder(nextTime(kept), "2026-03-14").deviceTypes(types()).build()))
        .isEqualTo(2);
  }

  /** Another rule of the same jar is another rule. */
  @Test
  void anotherRuleIsRun() throws IOException {
    KeptOutcomes kept = KeptOutcomes.none();
    SiteInput site = SiteInput.text("north/example.yaml", Example.SITE);
    SiteLinter one =
        SiteLinter.builder().rule(new Saying("house.one")).keepingOutcomes(kept).build();
    assertThat(one.check(Stream.of(site)).results()).hasSize(1);
    SiteLinter other =
        SiteLinter.builder().rule(new Saying("house.two")).keepingOutcomes(nextTime(kept)).build();
    assertThat(other.check(Stream.of(site)).results())
        .singleElement()
        .satisfies(result -> assertThat(result.rule()).isEqualTo("house.two"));
  }

  private record Saying(String id) implements SiteRule {
    @Override
    public RuleDescriptor descriptor() {
      return RuleDescriptor.of(id, "It says its name.", Level.NOTE);
    }

    @Override
    public void check(Site site, RuleContext context) {
      context.report(site.id().place(), new Message(id, "so that it is seen", "nothing to do"));
    }
  }

  private static SiteInput policy(String level) {
    return SiteInput.text(
        "linter.yaml", "format: 1\nrules: {address.gap: {level: " + level + "}}\n");
  }

  private static SiteInput types() {
    return SiteInput.text("device-types.yaml", "format: 1\ndevice-types: [{id: eight-way}]\n");
  }

  /** Rules on changes look at more than the file. */
  @Test
  void aCheckAgainstAnEarlierStateKeepsNothing() throws IOException {
    KeptOutcomes kept = KeptOutcomes.none();
    SiteState nothing = SiteState.of(Stream.of(), null);
    assertThat(seen(builder(kept, "2026-03-14").before(nothing).build())).isEqualTo(2);
    assertThat(kept.isChanged()).isFalse();
  }

  /** What two files clash about is no matter of one file. */
  @Test
  void filesThatClashStillDo() throws IOException {
    KeptOutcomes kept = KeptOutcomes.none();
    SiteInput north = SiteInput.text("north/example.yaml", Example.SITE);
    SiteInput south = SiteInput.text("south/example.yaml", Example.SITE);
    assertThat(builder(kept, "2026-03-14").build().check(Stream.of(north)).results()).isEmpty();
    assertThat(
            builder(nextTime(kept), "2026-03-14").build().check(Stream.of(north, south)).results())
        .singleElement()
        .satisfies(
            result -> {
              assertThat(result.rule()).isEqualTo("site.duplicate-id");
              assertThat(result.location().file()).isEqualTo("south/example.yaml");
            });
  }
}
