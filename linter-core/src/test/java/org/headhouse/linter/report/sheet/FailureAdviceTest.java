package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.SiteText;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/**
 * How a line runs on without one of its units, as each set-up card says: common practice, no
 * source.
 */
class FailureAdviceTest {
  private static List<String> failing(Document page, int unit) {
    return page.select("#cards .card").get(unit - 1).select("h4:contains(fails) ~ p").eachText();
  }

  @Test
  void withoutTheHeadUnitTheLineDoesNotRun() {
    assertThat(failing(Sheets.page(Papers.PROVED), 1))
        .first()
        .asString()
        .startsWith("No follower gets readings: do what the night card says.")
        .contains("even with its cables joined");
  }

  @Test
  void aUnitInTheMiddleIsJoinedThrough() {
    assertThat(failing(Sheets.page(Papers.PROVED), 2))
        .contains(
            "Its house loses readings and control: close its vents by hand. The others go on.",
            "If they lose readings too, take it off the pair and join its two cables: D1 to D1, D0"
                + " to D0, common to common, shield to shield.")
        .noneMatch(text -> text.contains("outside its limits") || text.contains("not known"))
        .last()
        .asString()
        .startsWith("Set-points are not in the file")
        .contains("licensed");
  }

  @Test
  void withoutItsBiasTheOthersDoNotGoOn() {
    String others =
        "Its supply also feeds the bias, and without bias perhaps no other house gets readings: treat"
            + " all others as the night card says under 2.";
    Document page = Sheets.page(NightCardTest.needingBias("needed", "House 3"));
    assertThat(failing(page, 3))
        .contains("Its house loses readings and control: close its vents by hand. " + others);
    assertThat(failing(page, 2)).noneMatch(text -> text.contains("feeds the bias"));
    assertThat(failing(Sheets.page(NightCardTest.needingBias("not-needed", "House 3")), 3))
        .noneMatch(text -> text.contains("feeds the bias"));
  }

  @Test
  void theTerminatorOfTheLastUnitMovesToTheNewEnd() {
    assertThat(failing(Sheets.page(Papers.PROVED), 4))
        .contains(
            "If they lose readings too, take it off the pair, and take the last run of cable off"
                + " House 3, the new end. Move to House 3: terminator 120 ohm.")
        .noneMatch(text -> text.contains("outside its limits"));
  }

  @Test
  void biasAndGroundOfTheShieldMoveToo() {
    String site =
        Papers.PROVED
            .replace("{at: Head House, resistors", "{at: House 3, resistors")
            .replace("[A, B, C, G]", "[A, B, C]")
            .replaceFirst("(address: 3\n(?:.*\n){2}    conductors: )\\[A, B, C]", "$1[A, B, C, G]");
    assertThat(failing(Sheets.page(site), 3))
        .anyMatch(text -> text.endsWith("Move to House 2: bias resistors, ground of the shield."));
  }

  /** A repeater with its own terminator: the segment that is left there is checked as any other. */
  @Test
  void aUnitOnABranchIsTakenOffItsBranch() {
    String site = Papers.PROVED.replaceFirst("address: 3\n", "address: 3\n    stub: 2 m\n");
    assertThat(failing(Sheets.page(site), 3))
        .anyMatch(text -> text.endsWith("take it off the pair where its branch leaves the trunk."));
  }

  /**
   * Bias in the middle of a long line reaches both ends; at either end it no longer reaches the
   * other. On a short line it does.
   */
  @Test
  void whatIsOutsideItsLimitsThenIsSaid() {
    assertThat(failing(Sheets.page(biasedInTheMiddle("400 m")), 2))
        .anyMatch(one -> one.contains("Move to ") && one.contains("bias resistors"))
        .anyMatch(
            one -> one.startsWith("The line is outside its limits then: the idle voltage at"));
    assertThat(failing(Sheets.page(biasedInTheMiddle("20 m")), 2))
        .anyMatch(one -> one.endsWith("Move to Head House: bias resistors."))
        .noneMatch(one -> one.contains("outside its limits"));
    String unknown = biasedInTheMiddle("20 m").replaceFirst("cable-to-next: 20 m", "firmware: '1'");
    assertThat(failing(Sheets.page(unknown), 2)).anyMatch(one -> one.contains("is not known"));
  }

  private static String biasedInTheMiddle(String cable) {
    return new SiteText()
        .bias("Bay 2", "450 ohm", "5 V")
        .unit("120 ohm", cable)
        .unit("none", cable)
        .unit("120 ohm", "")
        .toString();
  }
}
