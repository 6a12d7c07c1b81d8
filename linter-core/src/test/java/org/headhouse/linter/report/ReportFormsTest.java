package org.headhouse.linter.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.maven.plugin.surefire.log.api.NullConsoleLogger;
import org.apache.maven.plugins.surefire.report.ReportTestCase;
import org.apache.maven.plugins.surefire.report.ReportTestSuite;
import org.apache.maven.plugins.surefire.report.SurefireReportParser;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.headhouse.linter.JsonText;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportFormsTest {
  private static final String SUPPRESSION =
      """
      suppressions:
        - rule: termination.mid-line
          justification: Spare terminator, taken out at the next visit.
      """;

  private static CheckReport faulty() {
    return Checks.of(
        Example.with("termination: none", "termination: 120 ohm")
                .replace("address: 3", "address: 2")
                .replace("Hardening Bay", "Bay <&> \u202E 1")
            + SUPPRESSION);
  }

  /** The JSON Schema that OASIS publishes with SARIF 2.1.0. */
  @Test
  void theLogIsSarif() throws Exception {
    CheckReport report = faulty();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new SarifReport(report.rules()).write(report.results(), report.notifications(), out);
    try (InputStream schema = sarifSchema()) {
      var registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7);
      assertThat(registry.getSchema(schema).validate(out.toString(UTF_8), InputFormat.JSON))
          .isEmpty();
    }
    assertThat(out.toString(UTF_8))
        .contains("\"kind\" : \"inSource\"", "\"artifactChanges\"")
        .contains("unicodeCodePoints");
  }

  /** A consumer that knows nothing of this project mends the file with what the log says. */
  @Test
  void theFixesOfTheLogMendTheFile() {
    CheckReport report = Checks.of(Example.with("termination: none", "termination: 120 ohm"));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new SarifReport(report.rules()).write(report.results(), report.notifications(), out);
    JsonNode fix = JsonText.read(out.toString(UTF_8)).at("/runs/0/results/0/fixes/0");
    assertThat(fix.at("/description/text").asText())
        .isEqualTo("Remove the terminator of \"Seedling North\"");
    assertThat(fix.at("/properties/kind").asText()).isEqualTo("safe");
    JsonNode change = fix.at("/artifactChanges/0");
    assertThat(change.at("/artifactLocation/uri").asText()).isEqualTo("example.yaml");
    assertThat(change.at("/replacements/0").toString())
        .isEqualTo(
            "{\"deletedRegion\":{\"startLine\":20,\"startColumn\":18,\"endLine\":20,"
                + "\"endColumn\":25},\"insertedContent\":{\"text\":\"none\"}}");
  }

  private static InputStream sarifSchema() {
    InputStream schema =
        ReportFormsTest.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json");
    assertThat(schema).isNotNull();
    return schema;
  }

  /** Surefire's own parser reads the report as Surefire would have meant it. */
  @Test
  void theJUnitReportIsWhatSurefireReads(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("TEST-sites.xml");
    Notification trouble =
        new Notification(Level.ERROR, "permission denied", "sites/closed.yaml", null);
    try (OutputStream out = Files.newOutputStream(file)) {
      new JUnitReport(Level.ERROR).write(faulty().results(), List.of(trouble), out);
    }
    List<ReportTestSuite> suites =
        new SurefireReportParser(List.of(folder.toFile()), new NullConsoleLogger())
            .parseXMLReportFiles();
    assertThat(suites)
        .flatExtracting(ReportTestSuite::getTestCases)
        .extracting(
            one -> one.getFullClassName() + " " + one.getName(),
            ReportTestCase::hasFailure,
            ReportTestCase::hasError,
            ReportTestCase::getFailureMessage)
        .containsExactlyInAnyOrder(
            tuple("all sites checked", false, false, null),
            tuple("example.yaml address.duplicate", true, false, message("address.duplicate")),
            tuple("example.yaml name.unreadable", true, false, message("name.unreadable")),
            tuple("sites/closed.yaml reading", false, true, "permission denied"));
    String text = Files.readString(file);
    assertThat(text).contains("tests=\"4\" errors=\"1\" skipped=\"0\" failures=\"2\"");
  }

  private static String message(String rule) {
    return faulty().results().stream()
        .filter(result -> result.rule().equals(rule))
        .map(result -> TextReport.printable(result.message().fact()))
        .findFirst()
        .orElseThrow();
  }

  /** The form of the GNU coding standards: {@code sourcefile:lineno:column: message}. */
  @Test
  void theTextPointsAtTheRegion() {
    CheckReport report = Checks.of(Example.with("address: 3", "address: 2"));
    assertThat(report.results().stream().flatMap(result -> TextReport.lines(result).stream()))
        .containsExactly(
            "example.yaml:25:14: error: address 2 is used twice [address.duplicate]",
            "  17 |     address: 2",
            "     |              - address 2 is first used here, by \"Seedling North\"",
            "     ...",
            "  25 |     address: 2",
            "     |              ^",
            "  why: both units answer at once, which disturbs the whole line",
            "  fix: give \"Hardening Bay\" address 3 (goal fix does this)");
    assertThat(TextReport.summary(report.results(), 1, 3))
        .isEqualTo(
            List.of("1 site, 3 units: 1 error, 0 warnings, 0 notes", "     1  address.duplicate"));
  }

  @Test
  void textThatTurnsDirectionDoesNotReachTheTerminal() {
    assertThat(TextReport.printable("a\u202Eb\t\u001B[31m")).isEqualTo("a\uFFFDb \uFFFD[31m");
  }
}
