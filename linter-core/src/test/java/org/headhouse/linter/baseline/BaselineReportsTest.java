package org.headhouse.linter.baseline;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.headhouse.linter.JsonText;
import org.headhouse.linter.report.JUnitReport;
import org.headhouse.linter.report.SarifReport;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Level;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What reports tell of results that are new, known and gone. */
class BaselineReportsTest {
  private static final String FILE = "sites/example.yaml";
  private static final String BEFORE =
      Example.with("shielded: true", "shielded: false").replace("[A, B]", "[A]");
  private static final String AFTER =
      BEFORE.replaceFirst("\\[A]", "[A, B]").replace("termination: none", "termination: 120 ohm");

  @TempDir private Path folder = Path.of("");

  private CheckReport report() throws Exception {
    OldDebt debt = new OldDebt(folder);
    debt.take(Map.of(FILE, BEFORE));
    return debt.check(Map.of(FILE, AFTER));
  }

  private static JsonNode sarif(CheckReport report) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new SarifReport(report.rules())
        .write(report.results(), report.absent(), report.notifications(), out);
    // The JSON Schema that OASIS publishes with SARIF 2.1.0.
    try (InputStream schema =
        BaselineReportsTest.class.getResourceAsStream("/schema/sarif-schema-2.1.0.json")) {
      assertThat(
              SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
                  .getSchema(schema)
                  .validate(out.toString(UTF_8), InputFormat.JSON))
          .isEmpty();
    }
    return JsonText.read(out.toString(UTF_8)).at("/runs/0/results");
  }

  /** SARIF 2.1.0 §3.27.24: what is absent was in the baseline and is not in this run. */
  @Test
  void sarifTellsTheState() throws Exception {
    List<String> told = new ArrayList<>();
    for (JsonNode result : sarif(report())) {
      told.add(
          result.get("baselineState").asText()
              + " "
              + result.get("ruleId").asText()
              + " "
              + result.at("/locations/0/logicalLocations/0/fullyQualifiedName").asText()
              + " "
              + result.get("level").asText());
    }
    assertThat(told)
        .containsExactly(
            "unchanged cable.unshielded line/cable/shielded warning",
            "new termination.mid-line chain/Seedling North/termination error",
            "unchanged conductors.pair-missing chain/Hardening Bay/conductors error",
            "absent conductors.pair-missing chain/Seedling North/conductors none");
  }

  private static List<String> fingerprints(CheckReport report) throws Exception {
    List<String> fingerprints = new ArrayList<>();
    for (JsonNode result : sarif(report)) {
      fingerprints.add(result.at("/partialFingerprints/siteElement~1v1").asText());
    }
    assertThat(fingerprints).isNotEmpty().allMatch(one -> one.matches("[0-9a-f]{32}"));
    return fingerprints;
  }

  /** A system that follows results by fingerprint finds the one that is gone among the old ones. */
  @Test
  void fingerprintsLast() throws Exception {
    List<String> before = fingerprints(Checks.linter().checkText("elsewhere.yaml", BEFORE));
    assertThat(before).hasSize(4).doesNotHaveDuplicates();
    List<String> after = fingerprints(report());
    assertThat(before).contains(after.get(0), after.get(2), after.get(3));
    assertThat(before).doesNotContain(after.get(1));
  }

  /** Results that no baseline takes have a fingerprint all the same. */
  @ParameterizedTest
  @CsvSource({
    "'role: head', 'role: haed'",
    "'format: 1', 'format: ['",
    "'address: 3', 'address: 2'"
  })
  void everyResultHasAFingerprint(String text, String broken) throws Exception {
    String faulty = Example.with(text, broken);
    List<String> fingerprints = fingerprints(Checks.of(faulty));
    assertThat(fingerprints(Checks.of("# a comment\n" + faulty))).isEqualTo(fingerprints);
  }

  @Test
  void withoutABaselineNoStateIsTold() throws Exception {
    for (JsonNode result : sarif(Checks.of(BEFORE))) {
      assertThat(result.has("baselineState")).isFalse();
    }
  }

  @Test
  void whatIsKnownFailsNoTestCase() throws Exception {
    CheckReport report = report();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new JUnitReport(Level.NOTE).write(report.results(), report.notifications(), out);
    String xml = out.toString(UTF_8);
    assertThat(xml).contains("failures=\"1\"").contains("tests=\"4\"");
    assertThat(xml.split("<failure", -1)).hasSize(2);
    assertThat(xml).containsPattern("<failure [^>]*type=\"termination.mid-line\"");
    assertThat(xml).contains("[cable.unshielded] (known from the baseline)\n");
  }

  @Test
  void theSummaryCountsThem() throws Exception {
    CheckReport report = report();
    assertThat(TextReport.summary(report.results(), report.files(), report.units()))
        .containsExactly(
            "1 site, 3 units: 1 error, 0 warnings, 0 notes, 2 known from the baseline",
            "     1  termination.mid-line");
    assertThat(report.absent().get(0).text())
        .isEqualTo(
            "sites/example.yaml: chain/Seedling North/conductors: [A] [conductors.pair-missing]");
  }
}
