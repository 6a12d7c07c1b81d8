package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteText;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The procedure of proving, against the order in which the work is safe: common practice, no
 * source, but where a test names one.
 */
class ProvingSheetTest {
  private static final String CONVERTER =
      "  - {converter: Office, isolated: true, termination: 120 ohm, cable-to-next: 2 m}\n";
  private static final Document PLAIN = Sheets.page(Example.SITE);
  private static final Document LARGE = Sheets.page(large());

  /** A converter, a repeater, wind, vane and rain; vents of three kinds. */
  private static String large() {
    String roof = "vents: roof";
    return new SiteText()
            .bias("Head House", "560 ohm", "5 V")
            .unit("none", "100 m", roof, "on-stale-readings: close", "stale-after: 45 s")
            .unit("none", "50 m", roof, "on-stale-readings: close", "stale-after: 45 s")
            .repeater("Road", "120 ohm", "20 m")
            .unit("none", "10 m", roof, "on-stale-readings: hold", "close-time: 80 s")
            .unit("none", "10 m", "vents: none")
            .unit("120 ohm", "")
            .toString()
            .replace("chain:\n", "chain:\n" + CONVERTER)
            .replace("readings: [light]", "readings: [wind-speed, wind-direction, rain]")
            .replace("{light: local}", outdoor("local"))
            .replace("{light: head}", outdoor("head"))
        + "supervision: {link: serial, at: Office, zones: [Head House]}\n";
  }

  private static String outdoor(String source) {
    return "{wind-speed: %1$s, wind-direction: %1$s, rain: %1$s}".formatted(source);
  }

  private static List<String> steps(Document page) {
    return page.select("#proving .steps .step > span:first-of-type").eachText();
  }

  private static String all(Document page) {
    return page.select("#proving").text();
  }

  @Test
  void theStagesAreInTheOrderInWhichTheWorkIsSafe() {
    assertThat(LARGE.select("#proving h3").eachText())
        .containsExactly(
            "Before a supply goes off",
            "Supplies off",
            "Each run of cable, before it is landed",
            "Resistance, while all supplies are still off",
            "Power back",
            "Idle voltage and addresses, while nobody sends",
            "The weather station",
            "Each unit answers, and each follower shows the readings",
            "Vents: wind, rain, and readings that stop",
            "Before you leave",
            "Keep the proof in the file");
  }

  /** What one of these leaves out or does too early hurts somebody or breaks something. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "until when at the latest | Switch the supply off",
        "mild and calm | Switch the supply off",
        "Burners and CO₂ off | Switch the supply off",
        "One person stays in each house | Switch the supply off",
        "Disconnect batteries | highest AC range",
        "Switch off the computer | highest AC range",
        "highest AC range | No insulation tester",
        "highest AC range | Ohms between D1 and D0",
        "the same conductor at both ends | Remove the short",
        "Remove the short | Ohms between D1 and D0",
        "with the leads swapped | Covers on",
        "power stays off until the cause is fixed | Covers on",
        "Warn everybody, and keep them out of reach of vents | Stop the broadcast",
        "Stop its polls | Does each unit answer",
        "Stop the broadcast | DC volts",
        "The enclosures are live now | DC volts",
        "What is tried at the station moves vents | anemometer turns freely",
        "What is tried at the station moves vents | rain sensor is clean",
        "Stop the broadcast | Does each unit answer",
        "anemometer turns freely | let the station report wind",
        "let the station report wind | Burners and CO₂ on again"
      })
  void oneStepComesBeforeAnother(String first, String second) {
    List<String> steps = steps(LARGE);
    assertThat(steps).filteredOn(step -> step.contains(first)).isNotEmpty();
    assertThat(steps).filteredOn(step -> step.contains(second)).isNotEmpty();
    String joined = String.join("\n", steps);
    assertThat(joined.indexOf(first)).isLessThan(joined.indexOf(second));
  }

  @Test
  void everyStepHasABoxAndAPlace() {
    assertThat(LARGE.select("#proving .steps li")).hasSizeGreaterThan(35);
    for (Element step : LARGE.select("#proving .steps li")) {
      assertThat(step.select("label > input[type=checkbox]")).as(step.text()).hasSize(1);
      assertThat(step.select(".place").text()).as(step.text()).isNotBlank();
    }
  }

  /** Before each measurement of ohms the pair is known to carry nothing. */
  @Test
  void ohmsComeAfterAcAndDc() {
    for (String title : List.of("Each run of cable", "Resistance, while")) {
      Element heading = LARGE.expectFirst("#proving h3:contains(" + title + ")");
      String steps = heading.nextElementSiblings().select("ol.steps").get(0).text();
      assertThat(steps).containsSubsequence("ighest AC range", "highest DC range", "hms");
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Then the repeaters.",
        "side in",
        "computer",
        "Stop its polls",
        "anemometer turns freely",
        "The vane is aligned",
        "rain sensor is clean",
        "Rain: wet"
      })
  void whatASiteDoesNotHaveIsNotAsked(String words) {
    assertThat(all(LARGE)).contains(words);
    assertThat(all(PLAIN)).doesNotContain(words);
  }

  @Test
  void everyItemOfThePairIsSwitchedOff() {
    assertThat(LARGE.select("[aria-label='Supplies off'] tbody th").eachText())
        .containsExactly(
            "Office converter",
            "Head House unit, address 1",
            "Bay 2 unit, address 2",
            "Road repeater",
            "Bay 3 unit, address 3",
            "Bay 4 unit, address 4",
            "Bay 5 unit, address 5");
    assertThat(LARGE.select("[aria-label='Supplies off'] tbody tr").get(0).text())
        .contains("computer off, its lead unplugged");
  }

  /** Two conductors of 100 m of 24 AWG: 84.213 ohm/km at 20 °C, 0.393 % a kelvin (NBS 100). */
  @Test
  void theLoopOfARunIsComputed() {
    double at20 = 2 * 0.1 * 84.213;
    String low = "%.1f ohm".formatted(at20 * (1 - 30 * 0.00393) * 0.98);
    String high = "%.1f ohm".formatted(at20 * (1 + 30 * 0.00393) * 1.02);
    assertThat(LARGE.select("[aria-label='Runs of cable'] tbody tr").eachText())
        .contains("Head House to Bay 2 100 m " + low + " to " + high);
    assertThat(
            Sheets.page(Example.SITE.replace("    cable-to-next: 40 m\n", ""))
                .select("[aria-label='Runs of cable'] tbody tr")
                .get(0)
                .text())
        .isEqualTo("Propagation to Seedling North not known not known");
  }

  @Test
  void terminatorsAreTickedOff() {
    assertThat(LARGE.select("#proving .columns li").eachText())
        .containsExactly(
            "in place: 120 ohm at Office",
            "in place: 120 ohm at Road, side in",
            "in place: 120 ohm at Road, side out",
            "in place: 120 ohm at Bay 5",
            "every short is removed");
  }

  @Test
  void peopleAreWarnedWithTheStaleTimesOfTheFile() {
    Element heading = LARGE.expectFirst("#proving h3:contains(Idle voltage)");
    assertThat(heading.nextElementSiblings().select("ul").get(0).select("li").eachText())
        .containsExactly(
            "Bay 2: stale after 45 s; then the vents close",
            "Bay 3: stale after a time that is not known (ask); then the vents stay where they are",
            "Bay 5: stale after a time that is not known (ask); then what the vents do is not known"
                + " (ask)");
  }

  /** A unit that says nothing of vents may have some; only the written none is none. */
  @Test
  void unknownVentsAreNotTakenForNone() {
    assertThat(LARGE.select("[aria-label=Vents] tbody th").eachText())
        .containsExactly("Head House roof", "Bay 2 roof", "Bay 3 roof", "Bay 5 not known: look");
    assertThat(all(LARGE)).contains("No vents: Bay 4.");
    assertThat(LARGE.select(".card").get(3).text()).contains("Vents: no vents");
    assertThat(LARGE.select(".card").get(4).text())
        .contains(
            "Vents: not known: look",
            "On stale readings: not known: ask",
            "Stale after: not known: ask",
            "until its slowest vent is shut, and write it into the file as close-time.")
        .doesNotContain("Close time");
    assertThat(LARGE.select(".card").get(2).text())
        .contains("On stale readings: stay where they are", "vent is shut; the file has 80 s.");
  }

  @Test
  void theLimitOfTheLatestRecordIsAtHand() {
    String record =
        """
        commissioning:
          date: 2025-03-14
          by: R.O.
          storm-response-seen: [{unit: Seedling North, limit: 12 m/s, closed-in: 85 s}, Hardening Bay]
          renewed:
            - {date: 2025-11-02, by: R.O., reason: drive exchanged, storm-response-seen: [{unit: Seedling North, limit: 14 m/s, closed-in: 80 s}]}
        """;
    assertThat(
            Sheets.page(Example.with("stage: planned", "stage: commissioned") + record)
                .select("[aria-label=Vents] tbody tr")
                .eachText())
        .filteredOn(row -> row.contains("last "))
        .singleElement(InstanceOfAssertFactories.STRING)
        .startsWith("Seedling North")
        .contains("last 14 m/s");
  }

  @Test
  void aSiteWithoutVentsHasNoStormToProve() {
    String none = Example.SITE.replaceAll("(?m)^( {4}address: \\d)$", "$1\n    vents: none");
    assertThat(Sheets.page(none).select("#proving h3").eachText())
        .noneMatch(title -> title.startsWith("Vents"))
        .contains("Before you leave");
  }

  @Test
  void addressesAreSetBeforeThePairIsConnected() {
    assertThat(LARGE.select(".card"))
        .hasSize(5)
        .allMatch(card -> card.text().contains("Set the address before the pair is connected."));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "local electrical code",
        "makers' manuals",
        "person in charge",
        "licensed people",
        "Vents, screens, fans and their drives",
        "vents stay where they are",
        "A step that names no source is common practice."
      })
  void theCautionsAreOnEverySheet(String words) {
    assertThat(all(PLAIN)).contains(words);
  }

  /** WMO-No. 8, chapter 5 (quoted in the trade): 10 m, and ten times the height of an obstacle. */
  @Test
  void theStationIsWhereTheWindIs() {
    assertThat(steps(LARGE))
        .anyMatch(step -> step.contains("10 m above open ground") && step.contains("ten times"))
        .anyMatch(step -> step.contains("reports calm, and no fallback acts"));
  }

  /** One client at a time on a serial line: MODBUS over Serial Line V1.02, 2.1. */
  @Test
  void nobodyWritesFromALaptop() {
    assertThat(steps(LARGE))
        .anyMatch(step -> step.contains("isolated converter") && step.contains("2.1"))
        .anyMatch(step -> step.contains(": Read only. Never write from a laptop"));
  }

  /** A dosing rig that starts by itself doses into an empty tank, or onto somebody. */
  @Test
  void otherEquipmentIsStoppedAndStarted() {
    String rig =
        "  - {equipment: Dosing Rig, address: 57, polled: {by: head, registers: 4, every: 1 min},"
            + " termination: none, cable-to-next: 5 m}\n";
    Document page =
        Sheets.page(
            Example.SITE.replace("  - unit: Seedling North\n", rig + "  - unit: Seedling North\n"));
    assertThat(page.select("#proving .steps li").eachText())
        .filteredOn(step -> step.contains("Dosing Rig"))
        .satisfiesExactly(
            step -> assertThat(step).startsWith("Dosing Rig: Stop it as its manual says"),
            step -> assertThat(step).startsWith("Dosing Rig: Then the other equipment"),
            step -> assertThat(step).contains("Stop the broadcast and the polls of Dosing Rig"),
            step -> assertThat(step).startsWith("Dosing Rig: Runs again"));
    assertThat(all(PLAIN)).doesNotContain("equipment, with the person");
  }

  /** The suppression of one unit lets no other off. */
  @Test
  void thePutOffProofNamesItsUnit() {
    assertThat(LARGE.select("#proving pre").eachText())
        .anyMatch(text -> text.contains("#unit: \"___\""));
  }

  /** Without bias the table asks for a voltage all the same. */
  @Test
  void aVoltageThatIsAskedForHasItsStep() {
    String bare = Example.SITE.replaceFirst(", bias: \\[.*?]", "");
    assertThat(bare).isNotEqualTo(Example.SITE);
    assertThat(steps(Sheets.page(bare))).anyMatch(step -> step.contains(": DC volts"));
  }
}
