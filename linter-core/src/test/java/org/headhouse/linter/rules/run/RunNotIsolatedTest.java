package org.headhouse.linter.rules.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Between the earths of two buildings a current flows through interfaces that are not isolated (The
 * RS-485 Design Guide, TI SLLA272, grounding and isolation).
 */
class RunNotIsolatedTest {
  private static final String RULE = "run.not-isolated";
  private static final String[] TYPES = {
    "id: yes, isolated: true", "id: no, isolated: false", "id: unknown"
  };
  private static final String BETWEEN =
      "run-to-next: between-buildings\n    surge-protection-to-next: fitted";

  /** Units of these types; a stroke is the run between two buildings. */
  private static SiteText line(String types) {
    SiteText site = new SiteText();
    String[] each = types.split(" ", -1);
    int last = each.length - 1;
    for (int i = 0; i <= last; i++) {
      if (!each[i].equals("|")) {
        String end = i == 0 || i == last ? "120 ohm" : "none";
        boolean leaves = i < last && each[i + 1].equals("|");
        site.unit(end, i == last ? "" : "10 m", keys(each[i], leaves));
      }
    }
    return site;
  }

  private static String[] keys(String type, boolean leaves) {
    return leaves
        ? new String[] {"device-type: " + type, BETWEEN}
        : new String[] {"device-type: " + type};
  }

  /** The interfaces of two halves, from the head unit on, and the level. */
  @ParameterizedTest
  @CsvSource(
      delimiterString = ";",
      value = {
        "no | no; warning",
        "no yes | no; warning",
        "no unknown | unknown no; warning",
        "no no no; ''",
        // All of one half are isolated: no current finds a way.
        "yes | yes; ''",
        "yes | no; ''",
        "yes | unknown; ''",
        "yes yes | no no; ''",
        // One of which nobody knows may be the way.
        "unknown | unknown; note",
        "no | unknown; note",
        "no | unknown unknown; note",
        "no | yes unknown; note",
        "yes unknown | unknown yes; note",
        "yes unknown | no; note",
        // Each run divides the section; one result for it, the graver.
        "no | no | no; warning",
        "no | unknown | unknown; note",
        "unknown | no | no; warning",
        "yes | no | yes; ''",
        "no | yes | no; warning",
      })
  void bothHalves(String types, String level) {
    List<String> found =
        LineCheck.of(line(types)).types(TYPES).reported().stream()
            .filter(one -> one.endsWith(RULE))
            .toList();
    assertThat(found).isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
  }

  private static LineCheck withRepeater(String isolated, boolean before) {
    SiteText site = new SiteText().unit("120 ohm", "10 m", keys("no", !before));
    site.repeater("Booster", "120 ohm", "10 m").unit("120 ohm", "", "device-type: no");
    String says = isolated.isEmpty() ? "" : "\n    isolated: " + isolated;
    String leaves = before ? "\n    " + BETWEEN : "";
    return LineCheck.of(site)
        .types(TYPES)
        .with("repeater: Booster", "repeater: Booster" + says + leaves);
  }

  /** At either end of the run, an isolated repeater stops the current. */
  @ParameterizedTest
  @CsvSource({
    "true, ''",
    "false, 'joins two buildings, and neither side is isolated:'",
    "'', 'joins two buildings, unless the repeater \"Booster\" isolates them:'",
  })
  void aRepeaterAtTheRun(String isolated, String fact) {
    for (boolean before : new boolean[] {true, false}) {
      LineCheck check = withRepeater(isolated, before);
      if (fact.isEmpty()) {
        assertThat(check.reportedBy(RULE)).isEmpty();
      } else {
        assertThat(check.reportedBy(RULE)).singleElement().asString().contains("warning", fact);
        assertThat(check.marked(RULE)).isEqualTo("between-buildings");
      }
    }
  }

  /** It is not said of a repeater that may be isolated that it is not. */
  @Test
  void theManualOfTheRepeaterSaysIt() {
    assertThat(withRepeater("", true).reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("check its manual, and set isolated: true")
        .doesNotContain("neither side");
  }
}
