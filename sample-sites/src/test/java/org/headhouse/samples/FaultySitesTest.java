package org.headhouse.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.RuleDescriptor;
import org.junit.jupiter.api.Test;

/** The faulty sites show every rule at work, and nothing but what is expected of them. */
class FaultySitesTest {
  private static final Path FAULTY = Path.of("faulty");

  @Test
  void giveTheExpectedResults() throws IOException {
    List<String> found = check().results().stream().map(TextReport::headline).toList();
    Path actual = Files.createDirectories(Path.of("target")).resolve("faulty-results.txt");
    Files.write(actual, found);
    assertThat(found)
        .as("results, also in %s: where they are right, copy them to faulty/expected.txt", actual)
        .containsExactlyElementsOf(Files.readAllLines(FAULTY.resolve("expected.txt")));
  }

  @Test
  void breakEveryRule() throws IOException {
    CheckReport report = check();
    assertThat(report.results().stream().map(Result::rule).collect(Collectors.toSet()))
        .containsExactlyInAnyOrderElementsOf(
            report.rules().stream().map(RuleDescriptor::id).toList());
    assertThat(report.notifications()).isEmpty();
  }

  private static CheckReport check() throws IOException {
    SiteLinter linter =
        SiteLinter.builder()
            .policy(input(FAULTY.resolve("linter.yaml")))
            .deviceTypes(input(FAULTY.resolve("device-types.yaml")))
            .before(
                SiteState.of(
                    Stream.of(input(FAULTY.resolve("before/altered.yaml"))),
                    input(FAULTY.resolve("device-types.yaml"))))
            .build();
    try (Stream<Path> files = Files.walk(FAULTY.resolve("sites"))) {
      return linter.check(
          files
              .filter(file -> file.toString().endsWith(".yaml"))
              .sorted()
              .map(FaultySitesTest::input));
    }
  }

  private static SiteInput input(Path file) {
    return SiteInput.file(file, FAULTY.relativize(file).toString().replace('\\', '/'));
  }
}
