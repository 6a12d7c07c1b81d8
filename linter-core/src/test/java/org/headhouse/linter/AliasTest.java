package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;

/** A value that came through an alias is told at the alias, with its anchor. */
class AliasTest {

  @Test
  void aFaultBehindAnAliasPointsAtTheAlias() {
    String text =
        Example.SITE
            .replaceFirst("termination: 120 ohm", "termination: &ends 120 ohm")
            .replace("termination: none", "termination: *ends");
    CheckReport report = Checks.of(text);
    assertThat(Checks.places(report)).containsExactly("20:18 termination.mid-line");
    Result result = report.results().get(0);
    assertThat(result.related())
        .singleElement()
        .satisfies(
            related -> {
              assertThat(related.location().region().startLine()).isEqualTo(12);
              assertThat(related.location().region().startColumn()).isEqualTo(18);
              assertThat(related.text()).isEqualTo("the anchor &ends is here");
            });
    assertThat(result.unit()).isEqualTo("Seedling North");
    assertThat(result.logical()).isEqualTo("chain/Seedling North/termination");
  }

  @Test
  void aFaultInsideAnAnchorIsToldOnce() {
    String text =
        Example.SITE
            .replaceFirst(
                "outdoor: \\{light: head, temperature: head\\}",
                "outdoor: &shared {light: haed, temperature: head}")
            .replace("outdoor: {light: head, temperature: head}", "outdoor: *shared");
    assertThat(Checks.lines(text))
        .singleElement()
        .asString()
        .startsWith("example.yaml:21:30: error: \"light\" cannot be \"haed\"")
        .endsWith("write head [schema.bad-value]");
  }

  @Test
  void mergeKeysBringWhatIsNotWritten() {
    String text =
        Example.SITE
            .replace(
                "  - unit: Seedling North\n    role: follower\n",
                "  - &follower\n    unit: Seedling North\n    role: follower\n")
            .replace(
                "    address: 3\n    comm-module: fitted\n    conductors: [A, B]\n",
                "    address: 3\n    <<: *follower\n    cable-to-next: none\n");
    assertThat(Checks.lines(text)).isEmpty();
  }
}
