package org.headhouse.linter.fix;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.headhouse.linter.Fixing;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.result.FixKind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A misspelt key gets its spelling, whatever the rules would add for the lack of it. */
class MisspeltKeyTest {
  private static final String SITE =
      new SiteText()
          .unit("120 ohm", "10 m", "vents: roof")
          .unit("none", "10 m", "vents: roof", "on-stale-readings: hold")
          .unit("120 ohm", "", "pair: straight")
          .toString();

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "termination: none | terminaton: none",
        "termination: 120 ohm | terminaton: 120 ohm",
        "on-stale-readings: hold | on-stale-reading: hold",
        "on-stale-readings: hold | on_stale_readings: hold",
        "pair: straight | piar: straight",
        "outdoor: | outdor:",
        "light: head | ligth: head",
      })
  void theKeyIsSpelt(String text, String misspelt) throws IOException {
    SiteLinter linter = SiteLinter.builder().build();
    int at = SITE.lastIndexOf(text);
    String wrong = SITE.substring(0, at) + misspelt + SITE.substring(at + text.length());
    assertThat(Fixing.fix(linter, "example.yaml", wrong, FixKind.SAFE))
        .doesNotContain(misspelt)
        .isEqualTo(Fixing.fix(linter, "example.yaml", SITE, FixKind.SAFE));
  }
}
