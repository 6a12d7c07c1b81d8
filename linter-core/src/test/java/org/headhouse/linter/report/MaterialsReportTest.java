package org.headhouse.linter.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.report.sheet.Sheets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The table of materials adds up, and says what it does not know. */
class MaterialsReportTest {
  private static final Tables SAMPLES =
      Tables.of(Sheets.linter(1), Sheets.inputs(Sheets.SAMPLES.resolve("sites")));

  private static BigDecimal sum(String column, String material, String stage, boolean ofSites) {
    return SAMPLES.counts().stream()
        .filter(row -> Objects.equals(material, row.get("material")))
        .filter(row -> "all sites".equals(row.get("site")) != ofSites)
        .filter(
            row ->
                stage.isEmpty()
                    ? ofSites || "any".equals(row.get("stage"))
                    : Objects.equals(stage, row.get("stage")))
        .map(row -> new BigDecimal(row.get(column)))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"terminator", "bias-resistor", "comm-module", "surge-protector", "repeater"})
  void theSumsOfAllSitesAreThoseOfTheRows(String material) {
    for (String stage : List.of("", "planned", "commissioned")) {
      assertThat(sum("to-order", material, stage, false))
          .as(stage)
          .isEqualByComparingTo(sum("to-order", material, stage, true));
    }
    assertThat(sum("amount", material, "", false)).isPositive();
  }

  /** By hand: 24 AWG with a pair is in quillback-hollow (97 m) and sundrel (174 m). */
  @Test
  void cableIsAddedUpByType() {
    Map<String, String> total =
        SAMPLES.counts().stream()
            .filter(row -> "all sites".equals(row.get("site")) && "any".equals(row.get("stage")))
            .filter(row -> "24 AWG, shielded, 120 ohm, pair".equals(row.get("type")))
            .findFirst()
            .orElseThrow();
    assertThat(total)
        .containsEntry("amount", "271")
        .containsEntry("unit", "m")
        // 106.7 and 191.4 m, each rounded up for its site.
        .containsEntry("to-order", "299")
        .containsEntry("complete", "yes");
  }

  @Test
  void whereAllUseFeetTheSumIsInFeet() {
    assertThat(
            SAMPLES.counts().stream()
                .filter(row -> "all sites".equals(row.get("site")))
                .filter(row -> row.getOrDefault("type", "").startsWith("20 AWG")))
        .isNotEmpty()
        .allSatisfy(
            row ->
                assertThat(row)
                    .containsEntry("unit", "ft")
                    .containsEntry("amount", "794")
                    .containsEntry("to-order", "874"));
  }

  @Test
  void whatIsNotKnownIsEmptyAndNamed() {
    List<Map<String, String>> rows =
        Tables.of(
                Sheets.linter(1),
                Stream.of(
                    SiteInput.text(
                        "a.yaml",
                        Example.SITE
                            .replaceAll("    cable-to-next: .*\n", "")
                            .replace("termination: none", "termination: maybe"))))
            .counts();
    assertThat(rows.get(0))
        .containsEntry("material", "cable")
        .containsEntry("amount", "")
        .containsEntry("to-order", "")
        .containsEntry("complete", "no")
        .containsEntry(
            "not-counted",
            "cable from \"Propagation\" to \"Seedling North\"; cable from \"Seedling North\" to"
                + " \"Hardening Bay\"");
    assertThat(rows)
        .filteredOn(
            row -> "all sites".equals(row.get("site")) && "cable".equals(row.get("material")))
        .hasSize(2)
        .allSatisfy(
            row ->
                assertThat(row)
                    .containsEntry("amount", "")
                    .containsEntry("complete", "no")
                    .containsEntry("not-counted", "something at 1 site"));
    assertThat(rows)
        .filteredOn(row -> "terminator".equals(row.get("material")))
        .extracting(row -> row.get("type") + "/" + row.get("amount") + "/" + row.get("complete"))
        .contains("//no", "120 ohm/2/yes");
  }
}
