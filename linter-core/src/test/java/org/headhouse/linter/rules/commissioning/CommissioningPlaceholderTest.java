package org.headhouse.linter.rules.commissioning;

import static org.assertj.core.api.Assertions.assertThat;

import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CommissioningPlaceholderTest {
  private static final LineCheck SITE =
      LineCheck.of(
          new SiteText()
              .unit("120 ohm", "10 m")
              .unit("120 ohm", "")
              .measured("pair-resistance: 60 ohm"));

  /** Stand-ins as people write them: common practice, no source. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "R.O.    | 0",
        "Nadia   | 0",
        "Ng      | 0",
        "A.A.    | 0",
        "王      | 0",
        "森森    | 0",
        "김      | 0",
        "O       | 1",
        "xxx     | 1",
        "X.X.    | 1",
        "aaa     | 1",
        "N. A.   | 1",
        "n.a.    | 1",
        "to be done | 1",
        "tbc     | 1",
        "Unknown | 1",
        "'\"1\"' | 1",
        "'\"42\"' | 1",
        "'\".\"' | 1",
        "'\"?\"' | 1",
        "'\"-\"' | 1",
        "___     | 1",
        "TBD     | 1",
        "n/a     | 1",
      })
  void somebodySigns(String by, int results) {
    LineCheck check =
        SITE.with(
            "outdoor-readings-seen: [Bay 2]",
            "outdoor-readings-seen: [Bay 2], "
                + "renewed: [{date: 2026-04-02, by: "
                + by
                + ", reason: Bay 2 exchanged}]");
    assertThat(check.reportedBy("commissioning.placeholder")).hasSize(results);
  }
}
