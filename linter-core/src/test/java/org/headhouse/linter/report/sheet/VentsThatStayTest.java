package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import java.util.regex.Pattern;
import org.headhouse.linter.Example;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A house whose vents are set to stay where they are when readings are lost never looks like one
 * that closes them: common practice, no source.
 */
class VentsThatStayTest {
  private static String house3(String site, String action) {
    int start = site.indexOf("unit: House 3");
    String rest = site.substring(start);
    assertThat(rest).contains("on-stale-readings: close");
    return site.substring(0, start)
        + rest.replaceFirst(
            Pattern.quote("on-stale-readings: close"), "on-stale-readings: " + action);
  }

  @ParameterizedTest
  @ValueSource(strings = {"hold", "alarm"})
  void theCertificateNamesItBeforeItsVerdict(String action) {
    Document page = Papers.certificate(house3(Papers.PROVED, action));
    Element heading = page.expectFirst("h1");
    assertThat(heading.text()).isEqualTo("Proved, with exceptions");
    assertThat(Objects.requireNonNull(heading.previousElementSibling()).text())
        .contains("House 3", "do not close by themselves", "Close these by hand")
        .doesNotContain("House 2", "House 4");
    assertThat(page.select("tbody").get(1).select("tr").eachText())
        .contains(
            "House 3 seen to close, in 63 seconds seen: they stay where they are, as set",
            "House 4 seen to close, in 64 seconds seen to close");
  }

  @Test
  void aCertificateOfManyHousesHasItInItsList() {
    Document page = Papers.certificate(house3(Papers.line(20), "hold"));
    assertThat(page.expectFirst(".caution").text()).contains("House 3");
    assertThat(page.select(".houses li").eachText())
        .anyMatch(text -> text.matches("House 3: .* lost readings seen: they stay"))
        .anyMatch(text -> text.matches("House 4: .* lost readings seen"));
  }

  @Test
  void whereNobodySawItThatIsWhatIsMissing() {
    String site =
        house3(Papers.PROVED, "hold").replace("[Head House, House 2, House 3,", "[Head House, ");
    Document page = Papers.certificate(site);
    assertThat(page.expectFirst("h1").text()).isEqualTo("Not proved");
    assertThat(page.select(".reasons li").eachText())
        .contains(
            "Nobody saw lost readings close the vents at House 2.",
            "Nobody saw what the vents do when readings are lost at House 3.");
  }

  @ParameterizedTest
  @ValueSource(ints = {4, 12})
  void theYearlySheetDoesNotSayThatItShuts(int units) {
    String told = "Not those of House 3: they stay where they are, as set. Close these by hand.";
    Document sheet = Papers.paper("-yearly", Papers.YEARLY, house3(Papers.line(units), "hold"));
    assertThat(sheet.text()).contains(told).containsOnlyOnce("Not those of");
    assertThat(sheet.text().contains("stay where they are, also after 40 s")).isEqualTo(units <= 8);
    if (units > 8) {
      assertThat(sheet.select(".checks li").eachText())
          .filteredOn(text -> text.contains("lost: stay"))
          .singleElement()
          .asString()
          .startsWith("House 3 ");
    }
    assertThat(Papers.paper("-yearly", Papers.YEARLY, Papers.line(units)).text())
        .doesNotContain("Not those of", "lost: stay");
  }

  @Test
  void theProvingSheetSaysWhatIsSeenThere() {
    Document page = Sheets.page(house3(Papers.PROVED, "alarm"));
    assertThat(page.select("#proving p").eachText())
        .contains(
            "The vents of House 3 stay where they are when readings stop, as the file sets them."
                + " Enter them as seen once they did so, and close these by hand.");
    assertThat(page.select("#proving pre").text())
        .contains("\"House 3\"  # they stay where they are, as set")
        .doesNotContain("\"House 4\"  # they stay");
  }

  @Test
  void theListForAVisitAsksForIt() {
    String site =
        Example.with(
            "termination: none\n",
            "termination: none\n    vents: roof\n    on-stale-readings: hold\n");
    assertThat(VisitCsvTest.asked(site))
        .contains("vents stay where they are without readings (yes) @ Seedling North")
        .doesNotContain("vents shut without readings (yes) @ Seedling North")
        .contains("vents shut without readings (yes) @ Hardening Bay");
  }
}
