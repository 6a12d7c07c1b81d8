package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.text.Normalizer;
import java.util.List;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What somebody typed is reported as that, with what to type, and once. */
class TypingMistakesTest {
  private static final String NAME = "unit: Hardening Bay";

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "address: 3 | address: 1e20 | write a whole number from 1 to 247",
        "address: 3 | address: 400 | write a whole number from 1 to 247",
        "gauge: 24 AWG | gauge: 0,34 mm² | write 0.34 mm2, with a decimal point",
        "cable-to-next: 40 m | cable-to-next: 98 | write 98 m or 98 ft",
        NAME
            + " | unit: *Hall | write \"*Hall\" in quotes if it is text; else write &Hall before the value"
            + " that is meant",
        NAME + " | unit: \"'t Hof | write the closing quote",
      })
  void theRemedySaysWhatToType(String text, String other, String remedy) {
    assertThat(Checks.of(Example.with(text, other)).results())
        .singleElement()
        .extracting(result -> result.message().remedy())
        .isEqualTo(remedy);
  }

  @Test
  void aNameThatStartsWithAnApostropheGoesInDoubleQuotes() {
    assertThat(Checks.of(Example.with(NAME, "unit: 't Hof")).results())
        .singleElement()
        .extracting(result -> result.message().remedy())
        .isEqualTo(
            "write \"'t Hof\" if it starts with an apostrophe, else write the closing quote");
  }

  @ParameterizedTest
  @CsvSource({
    "'    address: 2', '\u00A0   address: 2', 17:1, a no-break space is in the indentation",
    "'    address: 2', '   \u2003 address: 2', 17:4, a space of another kind (U+2003) is in the"
        + " indentation",
    "address: 2, 'address:\u00A02', 17:12, a space of another kind follows the colon of \"address\""
  })
  void aSpaceOfAnotherKindIsNamed(String text, String other, String place, String fact) {
    assertThat(Checks.of(Example.with(text, other)).results())
        .singleElement()
        .satisfies(
            result -> {
              assertThat(result.message().fact()).isEqualTo(fact);
              assertThat(TextReport.headline(result)).startsWith("example.yaml:" + place + ":");
            });
  }

  /** Unicode Standard Annex 15: a letter and its accent can be one character or two. */
  @Test
  void twoNamesThatOnlyLookAlikeAreToldApart() {
    String composed = "Serre d'\u00C9t\u00E9";
    String text =
        Example.with(NAME, "unit: " + Normalizer.normalize(composed, Normalizer.Form.NFD))
            + "supervision: {link: serial, zones: [Propagation, Seedling North, "
            + composed
            + "]}\n";
    assertThat(Checks.of(text).results())
        .filteredOn(result -> result.rule().equals("supervision.zone-unknown"))
        .singleElement()
        .extracting(result -> result.message().remedy())
        .asString()
        .endsWith(
            ", typed anew: the two look alike, but an accent is a character of its own in one of"
                + " them");
  }

  @Test
  void whatStandsUnderAMisspeltKeyIsNotMissing() {
    assertThat(Checks.places(Example.with("termination: none", "terminaton: none")))
        .containsExactly("20:5 schema.unknown-key");
  }

  /** Else nothing would say that the terminator is not known. */
  @Test
  void itIsMissingWhereTheKeyIsAccepted() throws IOException {
    String text = Example.with("termination: none", "terminaton: none");
    CheckReport lowered =
        SiteLinter.builder()
            .policy(
                SiteInput.text(
                    "linter.yaml",
                    "format: 1\nrule-set: 1\nrules: {schema.unknown-key: {level: warning}}\n"))
            .build()
            .checkText("example.yaml", text);
    assertThat(lowered.results())
        .extracting(Result::rule)
        .containsExactly("termination.undeclared", "schema.unknown-key");
    String accepted =
        text + "suppressions: [{rule: schema.unknown-key, justification: It is ours.}]\n";
    assertThat(Checks.of(accepted).results())
        .filteredOn(result -> !result.suppressed())
        .extracting(Result::rule)
        .containsExactly("termination.undeclared");
  }

  @Test
  void noBaselineHoldsAMisspeltKey() {
    assertThat(Checks.of(Example.with("termination: none", "terminaton: none")).results())
        .singleElement()
        .extracting(Result::identities)
        .isEqualTo(List.of());
  }

  /** A foot is 0.3048 m (international yard and pound agreement, 1959): 1200 m are 3937.0 ft. */
  @Test
  void aFileInFeetGetsFeet() {
    String text =
        Example.SITE
            .replace("cable-to-next: 40 m", "cable-to-next: 1600 ft")
            .replace("cable-to-next: 60 m", "cable-to-next: 2400 ft");
    assertThat(Checks.of(text).results())
        .singleElement()
        .extracting(result -> result.message().fact())
        .isEqualTo(
            "the segment from \"Propagation\" to \"Hardening Bay\" is 4000 ft long; TIA/EIA-485-A"
                + " allows 3937 ft (1200 m)");
  }

  @Test
  void aMarkOfTheMakerIsTheLetterThatItStandsFor() throws IOException {
    String types =
        "format: 1\ndevice-types: [{id: mist, terminals: {positive: D+, negative: D-}}]\n";
    String text =
        Example.with("address: 2\n", "address: 2\n    device-type: mist\n")
            .replace(
                "conductors: [A, B]\n    termination: none",
                "conductors: [D+, D-]\n    termination: none");
    assertThat(
            SiteLinter.builder()
                .deviceTypes(SiteInput.text("device-types.yaml", types))
                .build()
                .checkText("example.yaml", text)
                .results())
        .extracting(result -> result.message().remedy())
        .containsExactly(
            "write B: that is the terminal D+ of the type \"mist\"",
            "write A: that is the terminal D- of the type \"mist\"");
  }
}
