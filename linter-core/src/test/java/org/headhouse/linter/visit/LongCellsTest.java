package org.headhouse.linter.visit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.time.Duration;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.draft.SiteUpdate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A cell as long as a list may be is refused at once. */
class LongCellsTest {
  private static final int LENGTH = 900_000;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "idle voltage (V),Propagation,,LONG,R.O.,2026-03-14,",
        "LONG,Propagation,,1,R.O.,2026-03-14,",
        "idle voltage (V),LONG,,1,R.O.,2026-03-14,",
        "idle voltage (V),Propagation,LONG,1,LONG,2026-03-14,",
        "idle voltage (V),Propagation,,1,R.O.,LONG,",
      })
  void isNoWork(String row) throws IOException {
    SiteLinter linter = SiteLinter.builder().build();
    int length = LENGTH / (row.split("LONG", -1).length - 1);
    for (String cell :
        new String[] {
          "1".repeat(length),
          "a" + " ".repeat(length) + "b",
          "1 to ".repeat(length / 5),
          "(1)".repeat(length / 3),
        }) {
      String list = Visits.HEADINGS + Visits.OF_SITE + row.replace("LONG", cell) + "\n";
      SiteUpdate update =
          assertTimeoutPreemptively(
              Duration.ofSeconds(20),
              () ->
                  linter.visit(
                      SiteInput.text("visit.csv", list),
                      SiteInput.text("elm-row.yaml", Visits.SITE)));
      assertThat(update).isNotNull();
    }
  }
}
