package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.headhouse.linter.Example;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** The record of a commissioned site is on its sheets, beside the room for the next one. */
class RecordOnSheetsTest {
  private static final Document PAGE = Sheets.page(Papers.PROVED);

  @Test
  void whoProvedItWhenAndWithWhatIsThere() {
    assertThat(PAGE.select("[aria-labelledby=recorded-title] tbody").text())
        .contains("14 March 2026", "Robin Oakfield", "62 ohms", "0.31 volts", "number M-118");
    assertThat(PAGE.select("#proving").text()).doesNotContain("Not proved:");
  }

  @Test
  void lastValuesAreBesideTheRoomForNewOnes() {
    assertThat(PAGE.select("[aria-label^=Measurements] td:nth-child(5)").eachText())
        .contains("62 ohm", "0.31 V", "0.29 V");
    assertThat(PAGE.select("[aria-label=Answers and readings] td .quiet").eachText())
        .hasSize(3)
        .containsOnly("last 14 March 2026");
    assertThat(PAGE.select("[aria-label=Vents] td .quiet").eachText())
        .contains("last 12 m/s", "last 62 s", "(last 14 March 2026)");
    assertThat(PAGE.select("input[value]")).isEmpty();
  }

  @Test
  void whatTheRecordLacksIsSaid() {
    String site =
        Papers.PROVED.replace("stale-response-seen: [Head House, ", "stale-response-seen: [");
    assertThat(Sheets.page(site).select("#proving").text())
        .contains("Not proved: the response to stale readings at Head House.");
  }

  @Test
  void aPlannedSiteHasNone() {
    assertThat(Sheets.page(Example.SITE).select("#recorded-title")).isEmpty();
  }

  @Test
  void theYearlySheetHasLastValuesBesideTheAcceptableOnes() {
    Document sheet = Papers.paper("-yearly", Papers.YEARLY, Papers.PROVED);
    assertThat(sheet.select("dl").text())
        .contains("14 March 2026", "Robin Oakfield", "M-118", "14 March 2027");
    assertThat(sheet.select("tbody").get(0).select("tr"))
        .hasSize(4)
        .allSatisfy(
            row -> {
              assertThat(row.child(2).text()).matches("62 ohm|0\\.\\d+ V");
              assertThat(row.child(3).text()).matches("[0-9.]+ to [0-9.]+ (?:ohm|mV)");
              assertThat(row.select("input")).hasSize(1);
            });
    assertThat(sheet.select("tbody").get(1).select("tr").get(1).text())
        .isEqualTo(
            "House 2 seen (last: 14 March 2026) 62 s at 12 m/s close time: 85 s close after"
                + " 40 s (last: 14 March 2026)");
    assertThat(sheet.text()).contains("anemometer turns freely");
  }

  @Test
  void surgeProtectorsAreLookedAt() {
    String site =
        Papers.PROVED.replaceFirst(
            "    cable-to-next: 8 m\n",
            """
                cable-to-next: 8 m
                run-to-next: between-buildings
                surge-protection-to-next: fitted
            """);
    assertThat(Papers.paper("-yearly", Papers.YEARLY, site).text())
        .contains("Head House to House 2: surge protectors at both ends look sound");
  }
}
