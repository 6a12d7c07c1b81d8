package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.RuleDescriptor;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The faulty sites show every rule at work, and nothing but what is expected of them. That the good
 * ones are good is checked by the plugin, in the build of the samples.
 */
class SampleSitesTest {
  private static final Path CHANGED = Path.of("..", "sample-sites", "changed");

  @Test
  @Tag("written")
  void theFaultySitesGiveTheExpectedResults() throws IOException {
    String found =
        FaultySites.check().results().stream()
            .map(result -> TextReport.inOneLine(result) + "\n")
            .collect(Collectors.joining());
    Written.compare(FaultySites.FOLDER.resolve("expected.txt"), found);
  }

  @Test
  void theFaultySitesBreakEveryRule() throws IOException {
    CheckReport report = FaultySites.check();
    assertThat(report.results().stream().map(Result::rule).collect(Collectors.toSet()))
        .containsExactlyInAnyOrderElementsOf(
            report.rules().stream().map(RuleDescriptor::id).toList());
    assertThat(report.notifications()).isEmpty();
  }

  /** All states of the changed site are good ones. */
  @ParameterizedTest
  @ValueSource(strings = {"before", "after", "exchanged"})
  void theChangedSiteIsGood(String state) throws IOException {
    CheckReport report =
        SiteLinter.builder()
            .deviceTypes(CHANGED.resolve("device-types.yaml"))
            .build()
            .checkFiles(List.of(CHANGED.resolve(state).resolve("hazelgate.yaml")));
    assertThat(report.results()).isEmpty();
    assertThat(report.notifications()).isEmpty();
  }
}
