package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.Region;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rules over all sites of a run. */
class RepositoryTest {
  private static final List<String> FILES =
      List.of("north/example.yaml", "south/example.yaml", "west/example/site.yaml");

  private static CheckReport check(SiteLinter linter, List<String> files) {
    return linter.check(files.stream().map(file -> SiteInput.text(file, Example.SITE)));
  }

  @ParameterizedTest
  @CsvSource({"1, 0", "2, 1", "3, 2"})
  void theSecondFileWithAnIdPointsAtTheFirst(int files, int clashes) {
    List<Result> results = check(Checks.linter(), FILES.subList(0, files)).results();
    assertThat(results).hasSize(clashes);
    for (int i = 0; i < clashes; i++) {
      Result result = results.get(i);
      assertThat(result.rule()).isEqualTo("site.duplicate-id");
      assertThat(result.level()).isEqualTo(Level.ERROR);
      assertThat(result.location().file()).isEqualTo(FILES.get(i + 1));
      assertThat(result.location().region()).isEqualTo(Region.onLine(2, 7, 7));
      assertThat(result.related())
          .singleElement()
          .satisfies(
              related -> {
                assertThat(related.location().file()).isEqualTo(FILES.get(0));
                assertThat(related.location().region()).isEqualTo(Region.onLine(2, 7, 7));
                assertThat(related.location().line()).isEqualTo("site: example");
              });
    }
  }

  @Test
  void thePolicyCanSwitchItOff() throws IOException {
    // Rules that yield to it would hide what it does not report.
    String policy =
        "format: 1\nrule-set: 1\nrules: {site.duplicate-id: {level: none},"
            + " network.duplicate-ip: {level: none}, supervision.zone-duplicate: {level: none}}\n";
    SiteLinter linter = SiteLinter.builder().policy(SiteInput.text("linter.yaml", policy)).build();
    assertThat(check(linter, FILES).results()).isEmpty();
  }

  @Test
  void oneRunKnowsNothingOfAnother() {
    SiteLinter linter = Checks.linter();
    for (String file : FILES) {
      assertThat(check(linter, List.of(file)).results()).isEmpty();
    }
  }

  @Test
  void filesThatCannotBeReadHaveNoId() {
    Stream<SiteInput> inputs =
        Stream.of(
            SiteInput.text("example.yaml", "site: example\nchain: [1\n"),
            SiteInput.text("other/example.yaml", Example.SITE));
    assertThat(Checks.linter().check(inputs).results())
        .extracting(Result::rule)
        .containsExactly("yaml.syntax");
  }
}
