package org.headhouse.linter.check;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.Example;
import org.headhouse.linter.JsonText;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.report.SarifReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.result.Suppression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Entries stand from line 30 on, their keys in the fifth column. */
class SuppressionsTest {
  private static final Clock TODAY =
      Clock.fixed(Instant.parse("2026-03-14T12:00:00Z"), ZoneOffset.UTC);
  private static final String TERMINATED =
      Example.with("termination: none", "termination: 120 ohm");
  private static final String REASON = "justification: Taken out at the next visit.";

  private static CheckReport check(String site, String... entry) throws IOException {
    return SiteLinter.builder()
        .clock(TODAY)
        .build()
        .checkText(
            "example.yaml", site + "suppressions:\n  - " + String.join("\n    ", entry) + "\n");
  }

  private static List<String> told(CheckReport report) {
    assertThat(report.notifications()).isEmpty();
    return report.results().stream()
        .map(
            result ->
                (result.suppressed() ? "suppressed " : "")
                    + result.location().region().startLine()
                    + ":"
                    + result.location().region().startColumn()
                    + " "
                    + result.rule())
        .toList();
  }

  @Test
  void anAcceptedResultStaysWithItsJustification() throws IOException {
    CheckReport report = check(TERMINATED, "rule: termination.mid-line", REASON);
    assertThat(told(report)).containsExactly("suppressed 20:18 termination.mid-line");
    Result result = report.results().get(0);
    assertThat(result.level()).isEqualTo(Level.ERROR);
    assertThat(report.at(Level.NOTE)).isEmpty();
    assertThat(result.suppression())
        .extracting(Suppression::justification)
        .isEqualTo("Taken out at the next visit.");
    assertThat(result.suppression())
        .extracting(suppression -> suppression.location().region().startLine())
        .isEqualTo(31);
  }

  /** SARIF 2.1.0, section 3.35: kind, status, justification, location. */
  @Test
  void theLogTellsThatItIsAccepted() throws IOException {
    CheckReport report = check(TERMINATED, "rule: termination.mid-line", REASON);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new SarifReport(report.rules()).write(report.results(), report.notifications(), out);
    JsonNode suppression =
        JsonText.read(out.toString(UTF_8)).at("/runs/0/results/0/suppressions/0");
    assertThat(suppression.path("kind").asText()).isEqualTo("inSource");
    assertThat(suppression.path("status").asText()).isEqualTo("accepted");
    assertThat(suppression.path("justification").asText())
        .isEqualTo("Taken out at the next visit.");
    assertThat(suppression.at("/location/physicalLocation/region/startLine").asInt()).isEqualTo(31);
  }

  /** Two units have no module, so the entry's unit decides which of the results it is for. */
  @ParameterizedTest
  @CsvSource({
    "unit: Seedling North, suppressed 18:18 module.absent; 26:18 module.absent",
    "unit: Hardening Bay, 18:18 module.absent; suppressed 26:18 module.absent",
    "'', suppressed 18:18 module.absent; suppressed 26:18 module.absent",
    "unit: Propagation, 18:18 module.absent; 26:18 module.absent; 31:11 suppression.unused",
    "unit: hardening bay," + " 18:18 module.absent; 26:18 module.absent; 33:11 reference.unknown"
  })
  void aUnitNarrowsIt(String unit, String expected) throws IOException {
    String site =
        Example.SITE.replaceFirst("(?s)(Seedling.*?)fitted(.*?)fitted", "$1absent$2absent");
    CheckReport report =
        unit.isEmpty()
            ? check(site, "rule: module.absent", REASON)
            : check(site, "rule: module.absent", REASON, unit);
    assertThat(told(report)).containsExactly(expected.split("; "));
  }

  /** The last day counts. */
  @ParameterizedTest
  @CsvSource({
    "2026-03-15, suppressed 20:18 termination.mid-line",
    "2026-03-14, suppressed 20:18 termination.mid-line",
    "2026-03-13, 20:18 termination.mid-line; 33:12 suppression.expired",
    "2026-02-30, 20:18 termination.mid-line; 33:12 schema.bad-value",
    "next year, 20:18 termination.mid-line; 33:12 schema.bad-value"
  })
  void itEnds(String until, String expected) throws IOException {
    CheckReport report = check(TERMINATED, "rule: termination.mid-line", REASON, "until: " + until);
    assertThat(told(report)).containsExactly(expected.split("; "));
  }

  @ParameterizedTest
  @CsvSource({
    "address.gap, suppression.unused, the suppression of \"address.gap\" has nothing to suppress; delete",
    "adress.gap, suppression.unknown-rule, there is no rule \"adress.gap\"; write \"address.gap\"",
    "weather, suppression.unknown-rule, there is no rule \"weather\"; delete the entry",
    "suppression.unused, suppression.unknown-rule, \"suppression.unused\" cannot be suppressed; delete",
    "suppression.expired, suppression.unknown-rule, \"suppression.expired\" cannot be suppressed; delete",
    "suppression.unknown-rule, suppression.unknown-rule, cannot be suppressed; delete",
    "supression.unused, suppression.unknown-rule, there is no rule \"supression.unused\"; delete"
  })
  void whatHasNoEffectIsTold(String rule, String told, String contained) throws IOException {
    CheckReport report = check(Example.SITE, "rule: " + rule, REASON);
    assertThat(report.results())
        .singleElement()
        .satisfies(
            result -> {
              assertThat(result.rule()).isEqualTo(told);
              assertThat(result.level()).isEqualTo(Level.WARNING);
              assertThat(result.location().region().startLine()).isEqualTo(31);
              assertThat(result.location().region().startColumn()).isEqualTo(11);
              assertThat(result.message().text()).contains(contained.split("; "));
            });
  }

  /** One entry tells of another that has no effect, and cannot be silenced either. */
  @Test
  void suppressionsOfSuppressionsAreNeverUsed() throws IOException {
    CheckReport report =
        check(Example.SITE, "rule: address.gap", REASON + "\n  - rule: suppression.unused", REASON);
    assertThat(told(report))
        .containsExactly("31:11 suppression.unused", "33:11 suppression.unknown-rule");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "''", "'   '", "todo", "TODO", "tbd", "TBD", "' Tbd '", "'...'", "'-'", "'?'", "'123'"
      })
  void aJustificationHasToSaySomething(String written) throws IOException {
    CheckReport report =
        check(TERMINATED, "rule: termination.mid-line", "justification: " + written);
    assertThat(told(report))
        .hasSize(2)
        .contains("20:18 termination.mid-line")
        .anyMatch(one -> one.matches("32:20 schema\\.(bad-value|out-of-range)"));
  }

  @Test
  void aJustificationIsWanted() throws IOException {
    CheckReport report = check(TERMINATED, "rule: termination.mid-line");
    assertThat(told(report))
        .containsExactly("20:18 termination.mid-line", "31:5 schema.missing-key");
  }

  /** A warning of the schema stage can be accepted too. */
  @Test
  void resultsOfEarlierStagesCanBeAccepted() throws IOException {
    String site = Example.with("stage: planned", "stage: planned\ntitle: n");
    CheckReport report = check(site, "rule: yaml.ambiguous-scalar", REASON);
    assertThat(told(report)).containsExactly("suppressed 4:8 yaml.ambiguous-scalar");
  }
}
