package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.headhouse.linter.baseline.Baseline;
import org.headhouse.linter.baseline.SitePaths;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.run.Outcome;
import org.headhouse.linter.site.Site;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a report says of the whole of a check; a site that nobody looked at must not pass. */
class VerdictTest {
  private static final String GAP = Example.with("address: 3", "address: 4");
  private static final String UNSHIELDED = Example.with("shielded: true", "shielded: false");

  @TempDir private Path folder;

  private static void passesAt(CheckReport report, Level... passing) {
    assertThat(Level.values()).filteredOn(report::passes).containsExactly(passing);
    for (Level level : Level.values()) {
      Outcome outcome = Outcome.of(report, level);
      assertThat(outcome.failed().isEmpty() && outcome.toolErrors().isEmpty())
          .isEqualTo(report.passes(level));
    }
  }

  @Test
  void aSiteWithoutAResultPassesAtEveryLevel() {
    passesAt(Checks.of(Example.SITE), Level.values());
  }

  @Test
  void aResultFailsItsLevelAndMilderOnes() {
    passesAt(Checks.of(UNSHIELDED), Level.ERROR, Level.NONE);
    passesAt(Checks.of(GAP), Level.NONE);
  }

  @Test
  void whatIsSuppressedFailsNothing() {
    String accepted = "suppressions: [{rule: cable.unshielded, justification: Laid in 1998.}]\n";
    CheckReport report = Checks.of(UNSHIELDED + accepted);
    assertThat(report.results()).extracting(Result::suppressed).containsExactly(true);
    passesAt(report, Level.values());
  }

  @Test
  void whatTheBaselineKnowsFailsNothing() throws IOException {
    SiteLinter.Builder builder = SiteLinter.builder().shownFrom(folder);
    ByteArrayOutputStream written = new ByteArrayOutputStream();
    Baseline.empty(new SitePaths(folder, folder))
        .renewed(
            builder.build().checkText("example.yaml", UNSHIELDED).results(),
            Set.of("example.yaml"),
            true)
        .write(written);
    Path baseline = Files.write(folder.resolve("baseline.jsonl"), written.toByteArray());
    SiteLinter linter = builder.baseline(baseline).build();
    passesAt(linter.checkText("example.yaml", UNSHIELDED), Level.values());
    passesAt(linter.checkText("example.yaml", GAP), Level.NONE);
  }

  @Test
  void aFileThatCannotBeReadPassesAtNoLevel() throws IOException {
    CheckReport report =
        SiteLinter.builder().build().checkFiles(List.of(folder.resolve("missing.yaml")));
    assertThat(report.results()).isEmpty();
    assertThat(report.failures()).isEqualTo(report.notifications()).hasSize(1);
    passesAt(report);
  }

  /** Whoever looked for the sites in the wrong place must not get a pass. */
  @Test
  void aCheckOfNoSitePassesAtNoLevel() throws IOException {
    SiteLinter linter = SiteLinter.builder().build();
    for (CheckReport report :
        List.of(
            linter.check(Stream.empty()), linter.checkFiles(List.of()), linter.join(List.of()))) {
      assertThat(Level.values()).noneMatch(report::passes);
    }
  }

  /** A column of a database may be null. */
  @Test
  void anInputWithoutContentPassesAtNoLevel() throws IOException {
    CheckReport report =
        SiteLinter.builder().build().check(Stream.of(new SiteInput("example.yaml", most -> null)));
    assertThat(report.failures())
        .extracting(Notification::text)
        .containsExactly("the file cannot be read: it has no content");
    passesAt(report);
  }

  /** Rules that need the device types are silent, so what is left of a site means little. */
  @Test
  void whatIsWrongInTheFilesForAllSitesStaysWithEachSite() throws IOException {
    CheckReport report =
        SiteLinter.builder()
            .deviceTypes(SiteInput.text("device-types.yaml", "format: 1\ndevice-types: [\n"))
            .build()
            .checkText("example.yaml", Example.SITE);
    passesAt(report, Level.NONE);
    passesAt(report.only(Set.of("example.yaml")), Level.NONE);
    assertThat(report.settings()).containsExactly("device-types.yaml");
  }

  private static final class Failing implements SiteRule {
    @Override
    public RuleDescriptor descriptor() {
      return RuleDescriptor.of("nursery.failing", "Nothing passes.", Level.NOTE);
    }

    @Override
    public void check(Site site, RuleContext context) {
      throw new IllegalStateException("on purpose");
    }
  }

  @Test
  void aRuleThatFailsPassesAtNoLevel() throws IOException {
    CheckReport report =
        SiteLinter.builder().rule(new Failing()).build().checkText("example.yaml", Example.SITE);
    assertThat(report.failures()).extracting(Notification::rule).containsExactly("nursery.failing");
    passesAt(report);
  }
}
