package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.Example;
import org.headhouse.linter.report.Paper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** One label for each end of each cable and one for each item. */
class LabelsTest {

  private static List<String> labels(String text, String section) {
    Document page = Jsoup.parse(Sheets.materials(text, Paper.A4));
    return page.select(section + " .label").eachText();
  }

  @Test
  void bothEndsOfACableHaveBothNames() {
    assertThat(labels(Example.SITE, "#cable-labels"))
        .containsExactly(
            "Propagation to Seedling North Cable 1, 40 m · example",
            "Seedling North to Propagation Cable 1, 40 m · example",
            "Seedling North to Hardening Bay Cable 2, 60 m · example",
            "Hardening Bay to Seedling North Cable 2, 60 m · example");
  }

  @Test
  void aUnitOnABranchHasACableOfItsOwn() {
    String text = Example.with("address: 2\n", "address: 2\n    stub: 0.5 m\n");
    assertThat(labels(text, "#cable-labels"))
        .containsExactly(
            "Propagation to Tap of Seedling North Cable 1, 40 m · example",
            "Tap of Seedling North to Propagation Cable 1, 40 m · example",
            "Tap of Seedling North to Seedling North Cable 2, 0.50 m · example",
            "Seedling North to Tap of Seedling North Cable 2, 0.50 m · example",
            "Tap of Seedling North to Hardening Bay Cable 3, 60 m · example",
            "Hardening Bay to Tap of Seedling North Cable 3, 60 m · example");
  }

  @Test
  void anEndAtARepeaterHasItsSide() {
    String text =
        Example.with(
            "  - unit: Hardening Bay",
            "  - repeater: Road Cabinet\n    termination: {in: 120 ohm, out: 120 ohm}\n"
                + "    cable-to-next: 9 ft\n  - unit: Hardening Bay");
    assertThat(labels(text, "#cable-labels"))
        .contains(
            "Road Cabinet, side in to Seedling North Cable 2, 60 m · example",
            "Road Cabinet, side out to Hardening Bay Cable 3, 2.7 m · example");
    assertThat(labels(text, "#item-labels"))
        .containsExactly(
            "Propagation unit, Address 1 example",
            "Seedling North unit, Address 2 example",
            "Road Cabinet repeater example",
            "Hardening Bay unit, Address 3 example");
  }

  @Test
  void whatIsNotKnownIsSaid() {
    String text = Example.with("    address: 2\n", "").replace("    cable-to-next: 60 m\n", "");
    assertThat(labels(text, "#cable-labels"))
        .contains("Seedling North to Hardening Bay Cable 2, length not known · example");
    assertThat(labels(text, "#item-labels"))
        .contains("Seedling North unit, Address not known example");
  }
}
