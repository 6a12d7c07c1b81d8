package org.headhouse.linter.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.util.stream.Collectors;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.headhouse.linter.report.sheet.Sheets;
import org.headhouse.linter.result.Level;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Console, JUnit XML, and the page with its drawings show the same of a name. */
class InvisibleTextTest {
  /** With a fault, so that the name is in messages and beside a sign of the drawing. */
  private static String site(int c) {
    String escape = String.format("\\U%08X", c);
    return Example.with("termination: none", "termination: 120 ohm")
        .replace("unit: Seedling North", "unit: \"Bay" + escape + "2\"");
  }

  private static String junit(CheckReport report) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new JUnitReport(Level.NOTE).write(report.results(), report.notifications(), out);
    return out.toString(UTF_8);
  }

  private static String console(CheckReport report) {
    return report.results().stream()
        .flatMap(result -> TextReport.lines(result).stream())
        .collect(Collectors.joining("\n"));
  }

  /** The fillers of Hangul, zero width, a byte order mark, turns of direction, a soft hyphen. */
  @ParameterizedTest
  @ValueSource(
      ints = {0x3164, 0x115F, 0x1160, 0xFFA0, 0x200B, 0x2060, 0xFEFF, 0x202E, 0x2066, 0x00AD})
  void whatCannotBeSeenReachesNoForm(int c) throws Exception {
    CheckReport report = Checks.of(site(c));
    String page = Sheets.html(site(c));
    assertThat(page).contains("<svg");
    for (String form : new String[] {console(report), junit(report), page}) {
      assertThat(form).doesNotContain(Character.toString(c)).contains("Bay\uFFFD2");
    }
  }

  /** Letters beside the fillers, in Hangul, and a joiner that Persian needs. */
  @ParameterizedTest
  @ValueSource(ints = {0x3163, 0x1112, 0xFFA1, 0xAC00, 0x05D0, 0x0639, 0x0E01, 0x200C, 0x10400})
  void whatCanBeSeenStays(int c) throws Exception {
    CheckReport report = Checks.of(site(c));
    for (String form : new String[] {console(report), junit(report), Sheets.html(site(c))}) {
      assertThat(form).contains("Bay" + Character.toString(c) + "2");
    }
  }
}
