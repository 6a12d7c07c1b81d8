package org.headhouse.linter.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
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

  /**
   * JSON is printed too. With U+009B a terminal may begin a command (ECMA-48, CSI), and U+2028 and
   * U+0085 end lines for some readers. The text that is read is the very one.
   */
  @ParameterizedTest
  @ValueSource(ints = {0x1B, 0x7F, 0x85, 0x9B, 0x00AD, 0x200B, 0x2028, 0x202E, 0x2066, 0xFEFF})
  void inJsonWhatCannotBeSeenIsEscaped(int c) throws Exception {
    String name = "a" + Character.toString(c) + "\uD83C\uDF31\u00E9.yaml";
    CheckReport report =
        SiteLinter.builder().build().check(Stream.of(SiteInput.text(name, site(0x202E))));
    assertThat(report.results()).isNotEmpty();
    ByteArrayOutputStream sarif = new ByteArrayOutputStream();
    new SarifReport(report.rules()).write(report.results(), report.notifications(), sarif);
    ByteArrayOutputStream gitlab = new ByteArrayOutputStream();
    new CodeQualityReport(RepositoryPaths.unknown())
        .write(report.results(), report.notifications(), gitlab);
    ByteArrayOutputStream lines = new ByteArrayOutputStream();
    new JsonLinesReport().write(report.results(), report.notifications(), lines);
    for (ByteArrayOutputStream form : List.of(sarif, gitlab, lines)) {
      assertThat(form.toString(UTF_8)).doesNotContain(Character.toString(c)).contains("\u00E9");
    }
    String first = lines.toString(UTF_8).lines().findFirst().orElseThrow();
    assertThat(new ObjectMapper().readTree(first).get("file").textValue()).isEqualTo(name);
  }
}
