package org.headhouse.linter.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.change.SiteChange;
import org.headhouse.linter.repository.SiteState;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChangeReportTest {

  /** A page that a code host shows must not link, mention or compute what a name says. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "https://a.example/b  | https:<!-- -->//a.example/b",
        "www.a.example        | www<!-- -->.a.example",
        "ask @ops             | ask @<!-- -->ops",
        "a@b.example          | a@<!-- -->b.example",
        "$$x$$                | <span>$</span><span>$</span>x<span>$</span><span>$</span>",
        "a [b](c)             | a \\[b\\](c)",
      })
  void namesAreOnlyNames(String name, String shown) throws IOException {
    SiteState before = state(Example.SITE);
    SiteState after = state(Example.with("Hardening Bay", "\"" + name + "\""));
    List<SiteChange> changes = SiteLinter.builder().build().changes(before, after);
    assertThat(ChangeReport.markdown("then", changes)).contains(shown).doesNotContain(name);
  }

  private static SiteState state(String site) throws IOException {
    return SiteState.of(Stream.of(SiteInput.text("example.yaml", site)), null);
  }
}
