package org.headhouse.linter.rules.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.result.RelatedLocation;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;

/** Two files of one run. */
class SiteDuplicateIdTest {

  @Test
  void theSecondPointsToTheFirst() {
    List<Result> results =
        Checks.linter()
            .check(
                Stream.of(
                    SiteInput.text("a/example.yaml", Example.SITE),
                    SiteInput.text("b/example.yaml", Example.SITE)))
            .results();
    assertThat(results).extracting(Result::rule).containsExactly("site.duplicate-id");
    Result result = results.get(0);
    assertThat(result.location().file()).isEqualTo("b/example.yaml");
    assertThat(result.message().fact()).isEqualTo("the site \"example\" is defined a second time");
    assertThat(result.related())
        .extracting(RelatedLocation::text)
        .containsExactly("\"example\" is first defined here");
    assertThat(result.related().get(0).location().file()).isEqualTo("a/example.yaml");
  }
}
