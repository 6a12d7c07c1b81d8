package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.report.Paper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What stands on the sheets, against what an installer must find there. */
class SheetContentTest {
  private static final Sheets SAMPLES = Sheets.ofSamples();
  private static final Document MORVANE = Jsoup.parse(SAMPLES.file("morvane.html"));
  private static final Document TARNWICK = Jsoup.parse(SAMPLES.file("tarnwick.html"));

  private static List<String> landing(Document page, int item, int column) {
    return List.of(page.select("#landing tbody tr").get(item - 1).child(column).text());
  }

  /**
   * D1 is positive against D0 on an idle line (MODBUS over Serial Line V1.02, 2.2 and 3.4.6); which
   * terminal that is, is the maker's: B at the climate controllers, A at the heating loops.
   */
  @ParameterizedTest
  @CsvSource({"1, B, A", "2, A, B", "3, B, A", "4, A, B", "5, B, A", "6, A, B"})
  void eachConductorGoesToTheTerminalOfItsOwnMaker(int item, String positive, String negative) {
    assertThat(landing(MORVANE, item, 1)).containsExactly(positive);
    assertThat(landing(MORVANE, item, 2)).containsExactly(negative);
  }

  @Test
  void thePairIsCrossedWhereTheMakersDiffer() {
    assertThat(MORVANE.select("#landing tbody td:nth-child(4)").eachText())
        .filteredOn(pair -> !pair.isEmpty())
        .containsExactly("crossed", "straight", "crossed", "straight", "crossed");
  }

  @Test
  void aPairThatTheFileHasTheWrongWayIsLandedByTheMarks() {
    Document page =
        Sheets.page(
            Example.SITE
                .replace("address: 1\n", "address: 1\n    device-type: eight-way\n")
                .replace(
                    "address: 3\n",
                    "address: 3\n    device-type: heating-loop\n    pair: straight\n")
                .replace(
                    "comm-module: fitted\n    conductors: [A, B]\n    termination: 120",
                    "comm-module: built-in\n    conductors: [A, B]\n    termination: 120"));
    assertThat(landing(page, 3, 1)).containsExactly("A");
    assertThat(landing(page, 3, 3)).containsExactly("crossed; in the file straight");
    assertThat(page.select("#landing tbody tr").get(3).select(".open").eachText())
        .containsExactly(
            "Open error: this unit marks its positive terminal A, the head unit B, but the"
                + " pair is straight (conductors.polarity)");
  }

  /** The van sheet hangs alone, and what is accepted is on none of its rows. */
  @Test
  void theVanSheetSaysThatSomethingIsAccepted() {
    String site =
        Example.SITE.replaceFirst("termination: none", "termination: 120 ohm")
            + "suppressions:\n  - {rule: termination.mid-line, justification: Until spring}\n";
    assertThat(van(site).select("header").text())
        .contains("Accepted faults 1, listed on the sheets for the site");
    assertThat(van(Example.SITE).text()).doesNotContain("Accepted faults");
  }

  private static Document van(String text) {
    Stream<SiteInput> site = Stream.of(SiteInput.text("example.yaml", text));
    return Jsoup.parse(Sheets.of(site, Measure.METRIC, Paper.A4).file("example-van.html"));
  }

  /** Of two units of one name, each row and card has what is wrong there. */
  @Test
  void whatIsOpenIsAtTheUnitThatItIsAbout() {
    Document page =
        Sheets.page(
            Example.SITE
                .replace("unit: Hardening Bay", "unit: Seedling North")
                .replaceFirst("termination: none", "termination: 68 ohm")
                .replaceFirst("(address: 3\n.*\n    conductors: )\\[A, B\\]", "$1[A]"));
    String twice = "Open error: its name is used twice (name.duplicate)";
    assertThat(page.select("#landing tbody tr.notes").eachText())
        .containsExactly(
            "Open error: this unit has a 68 ohm terminator but is not at an end of its segment"
                + " (termination.mid-line) "
                + twice,
            twice
                + " Open error: conductor B is not connected at this unit"
                + " (conductors.pair-missing)");
    assertThat(page.select(".card").stream().map(card -> card.select(".open").eachText()).toList())
        .containsExactly(List.of(), List.of(twice), List.of(twice));
  }

  /** The shield is grounded at one end of each cable (MODBUS over Serial Line V1.02, 3.6). */
  @Test
  void theShieldIsGroundedOnceInEachSegment() {
    List<String> shields = TARNWICK.select("#landing tbody td:nth-child(6)").eachText();
    assertThat(shields.stream().filter(text -> text.contains("to protective ground"))).hasSize(2);
    assertThat(shields.get(0)).isEqualTo("to protective ground, here only");
    assertThat(shields.get(shields.size() - 1)).isEqualTo("cut back, insulated");
  }

  @Test
  void cablesLeadFromItemToItem() {
    Document page = Sheets.page(Example.SITE);
    assertThat(page.select("#landing tbody tr td:nth-child(10)").eachText())
        .containsExactly("40 m", "60 m", "none, end of line");
  }

  /** 40 m and 60 m are 131.2 ft and 196.9 ft (1 ft = 0.3048 m, by definition). */
  @Test
  void lengthsAreShownInFeetWhereTheyAreWanted() {
    Sheets sheets =
        Sheets.of(
            Stream.of(SiteInput.text("example.yaml", Example.SITE)), Measure.US, Paper.LETTER);
    Document page = Jsoup.parse(sheets.file("example.html"));
    assertThat(page.select("#landing tbody tr td:nth-child(10)").eachText())
        .containsExactly("131.2 ft", "196.9 ft", "none, end of line");
    assertThat(page.select("#line dd").eachText()).contains("328.1 ft");
    assertThat(page.select("head style").html()).contains("size: letter;");
  }

  @Test
  void aCardHasAllThatIsSetAtAUnit() {
    Element card = MORVANE.select(".card").get(1);
    assertThat(card.select("h3").text()).isEqualTo("Tulip Heating");
    assertThat(card.select("ul.ticks li").eachText())
        .containsExactly(
            "Name: Tulip Heating",
            "Role: follower",
            "Address: 2",
            "Line: 9600 bit/s, 8 data bits, odd parity, 1 stop bit",
            "Vents: no vents",
            "light: head unit",
            "temperature: head unit",
            "wind speed: head unit",
            "rain: head unit");
    assertThat(card.select("ul.ticks li input[type=checkbox]")).hasSize(9);
    assertThat(card.text())
        .contains("Set the address before the pair is connected. Delivered with address 100.");
    assertThat(MORVANE.select(".card").get(0).select("li").eachText())
        .contains("light: own sensor", "On stale readings: close", "Vents: roof");
    assertThat(MORVANE.select(".card")).hasSize(6);
  }

  /** Bias of 560 ohm at 5 V and two terminators of 120 ohm: 0.2542 V (computed: RDG's formula). */
  @Test
  void figuresStandBesideTheirLimits() {
    String site =
        new SiteText()
            .bias("Head House", "560 ohm", "5 V")
            .unit("120 ohm", "1 m", "device-type: eight-way")
            .unit("120 ohm", "", "device-type: eight-way")
            .toString();
    Document page = Sheets.page(site);
    assertThat(page.select("#figures tbody tr").eachText())
        .anyMatch(
            row -> row.startsWith("Lowest idle voltage") && row.contains("2.1 dB within limit"))
        .anyMatch(row -> row.startsWith("Cable length") && row.contains("at most 1000 m"));
  }

  /**
   * Computed with R_B raised and all else lowered by 5 %: 4.75 / (588 · (1/588 + 4/114)) = 0.2196 V
   * and a little less with two units of 1/8 load; 620 ohm hold nominally and not at the worst
   * corner.
   */
  @ParameterizedTest
  @CsvSource({"560 ohm, 219 mV, within limit", "620 ohm, 199 mV, below margin"})
  void theWorstOfTheTolerancesStandsBesideTheNominal(String each, String volts, String verdict) {
    String site =
        new SiteText()
            .bias("Head House", each, "5 V")
            .unit("120 ohm", "0 m", "device-type: eight-way")
            .unit("120 ohm", "", "device-type: eight-way")
            .toString();
    assertThat(Sheets.page(site).select("#figures tbody tr").eachText())
        .anyMatch(
            row -> row.startsWith("Lowest idle voltage, at") && row.contains(" within limit "))
        .anyMatch(
            row ->
                row.startsWith("Lowest idle voltage, worst parts")
                    && row.contains(" " + volts + " at least ")
                    && row.contains(" " + verdict + " "))
        .anyMatch(
            row -> row.startsWith("Heaviest load on a driver") && row.contains("within limit"));
  }

  /** One end of the shield of each run is grounded: where the file lands its drain. */
  @Test
  void theShieldIsGroundedWhereTheDrainIsLanded() {
    String site =
        new SiteText()
            .bias("Head House", "560 ohm", "5 V")
            .unit("none", "10 m")
            .repeater("Road", "120 ohm", "10 m")
            .unit("none", "10 m")
            .unit("120 ohm", "")
            .toString()
            .replaceAll("(address: 3\n(?:.*\n)*?    conductors: \\[A, B)]", "$1, G]")
            .replace(
                "chain:\n",
                "chain:\n  - {converter: Office, conductors: [A, B], termination: 120 ohm,"
                    + " cable-to-next: 2 m}\n");
    assertThat(
            Sheets.page(site).select("#landing tbody tr:not(.notes)").eachText().stream()
                .map(
                    row ->
                        row.replaceAll(
                            ".*(cut back|here only|joined, ins|in: insulated; out: \\S+).*", "$1"))
                .toList())
        .containsExactly(
            "cut back", "here only", "in: insulated; out: insulated", "joined, ins", "here only");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "isolated: true | as its manual says",
        "conductors: {in: [A, B, C], out: [A, B, G]} | in: on C; out: on G"
      })
  void aRepeaterLandsWhatTheFileSays(String keys, String landed) {
    String site =
        new SiteText()
            .unit("120 ohm", "10 m")
            .repeater("Road", "120 ohm", "10 m")
            .unit("120 ohm", "")
            .toString()
            .replace("    idle-bias: {in", "    " + keys + "\n    idle-bias: {in");
    assertThat(Sheets.page(site).select("#landing tbody tr:not(.notes)").get(1).text())
        .contains(landed);
  }

  @Test
  void aLineInDisorderIsMendedFirst() {
    Document page = Sheets.page(Example.SITE.replace("termination: none", "termination: 120 ohm"));
    assertThat(page.select("#figures").text()).contains("fix those first");
  }

  @Test
  void resultsAreToldByRuleWithWhatToDo() {
    Document page =
        Sheets.page(
            Example.SITE
                .replace("address: 3", "address: 2")
                .replace(
                    "light: head, temperature: head}\n    cable",
                    "light: local, temperature: head}\n    cable"));
    assertThat(page.select("#line .rule").eachText())
        .hasSize(2)
        .satisfies(
            rules -> {
              assertThat(rules.get(0))
                  .startsWith("error: address 2 is used twice")
                  .endsWith("address.duplicate")
                  .contains("To do: give \"Hardening Bay\" address 3")
                  .contains("line 25, column 14");
              assertThat(rules.get(1)).startsWith("error: ").endsWith("outdoor.not-from-head");
            });
    assertThat(page.select(".card").get(2).select(".open").eachText())
        .containsExactly("Open error: address 2 is used twice (address.duplicate)");
    // Whoever sets or lands the first of the two has to see it too.
    assertThat(page.select(".card").get(1).select(".open").eachText())
        .containsExactly(
            "Open error: this unit is set to its own sensor for light" + " (outdoor.not-from-head)",
            "Open error: address 2 is used twice (address.duplicate)");
    assertThat(page.select(".card").get(0).select(".open")).isEmpty();
    assertThat(page.select("#landing .notes .open").eachText())
        .containsOnly("Open error: address 2 is used twice (address.duplicate)")
        .hasSize(2);
  }

  /** Each card is cut out, so what is wrong with all of them is on each. */
  @Test
  void aCardSaysWhatIsWrongWithTheLine() {
    Document page = Sheets.page(Example.SITE.replace("parity: even", "parity: none"));
    String framing =
        "Open warning: no parity with 1 stop bit makes 10-bit characters; Modbus uses 11"
            + " (serial.framing)";
    assertThat(page.select(".card .open").eachText()).containsExactly(framing, framing, framing);
    assertThat(page.select("#landing .open")).isEmpty();
  }

  @Test
  void theWiringOfTheWholeLineIsOpenAboveItsRows() {
    Document page = Sheets.page(Example.SITE.replace("shielded: true", "shielded: false"));
    assertThat(page.select("#landing > p .open").eachText())
        .containsExactly("Open warning: the cable is not shielded (cable.unshielded)");
    assertThat(page.select("#landing table .open, .card .open")).isEmpty();
  }

  /** What is accepted is not open, and a record that lacks something is nothing to land. */
  @Test
  void onlyWhatIsOpenAndLandedIsOnARow() {
    String mid = Example.SITE.replace("termination: none", "termination: 120 ohm");
    assertThat(Sheets.page(mid).select("#landing .notes .open").eachText())
        .singleElement()
        .asString()
        .startsWith("Open error: this unit has a 120 ohm terminator");
    assertThat(Sheets.page(mid).select(".card .open")).isEmpty();
    assertThat(
            Sheets.page(
                    mid
                        + "suppressions: [{rule: termination.mid-line, justification: Comes out on"
                        + " Monday.}]\n")
                .select("#landing .open"))
        .isEmpty();
    assertThat(
            Sheets.page(Example.SITE.replace("stage: planned", "stage: commissioned"))
                .select("#landing .open, .card .open"))
        .isEmpty();
  }

  @Test
  void aResultThatIsAcceptedStandsApart() {
    Document page =
        Sheets.page(
            Example.SITE.replace("address: 3", "address: 4")
                + "suppressions: [{rule: address.gap, justification: Unit 3 is in store.}]\n");
    assertThat(page.select("#line").text())
        .contains("No rule is broken.", "Accepted on purpose", "Accepted: Unit 3 is in store.");
  }

  @Test
  void theKeeperLearnsWhichAddressesAreSpare() {
    assertThat(MORVANE.select("#hand-over").text())
        .contains("The next unit gets address 7, above the highest in use. Free: 7 to 247.")
        .contains("heating-loop with address 100");
    assertThat(Sheets.page(Example.SITE.replace("address: 2", "address: 5")).text())
        .contains(
            "The next unit gets address 6, above the highest in use. Free: 6 to 247."
                + " Gaps that are free: 2, 4. Make sure that nothing answers there before you use"
                + " one.");
  }

  /** An address that a unit in store will have again is not handed out. */
  @Test
  void anAddressThatIsHeldIsNotSpare() {
    String gaps =
        Example.SITE.replace("address: 3", "address: 7").replace("address: 2", "address: 4");
    String held = "suppressions: [{rule: address.gap, unit: %s, justification: In store.%s}]\n";
    assertThat(
            Sheets.page(gaps + held.formatted("Hardening Bay", ", until: 2099-01-01"))
                .select("#hand-over")
                .text())
        .contains(
            "The next unit gets address 8, above the highest in use. Free: 8 to 247. Gaps"
                + " that are free: 2 to 3.",
            "Reserved gaps, not to be used: 5 to 6: In store. (until 2099-01-01)");
    assertThat(
            Sheets.page(gaps + held.formatted("Hardening Bay", ", until: 2020-01-01"))
                .select("#hand-over")
                .text())
        .contains("Gaps that are free: 2 to 3, 5 to 6.")
        .doesNotContain("held");
  }

  @Test
  void theKeeperLearnsWhatIsKeptFree() throws IOException {
    SiteLinter linter =
        SiteLinter.builder()
            .policy(
                SiteInput.text(
                    "linter.yaml",
                    """
                    format: 1
                    rule-set: 1
                    rules: {address.kept-free: {parameters: {ranges: [4-9, 57]}}}
                    """))
            .build();
    Sheets sheets =
        Sheets.of(
            linter,
            Stream.of(SiteInput.text("example.yaml", Example.SITE)),
            Measure.METRIC,
            Paper.A4);
    assertThat(sheets.pages().values().iterator().next().select("#hand-over").text())
        .contains(
            "The next unit gets address 10, above the highest in use. Free: 10 to 56, 58 to"
                + " 247. Kept free for other equipment: 4 to 9, 57.");
  }

  @Test
  void theHeadTellsWhatTheSheetWasMadeOf() {
    assertThat(MORVANE.select("header dd").eachText())
        .contains("morvane", "planned", "2026-11-25", "1");
  }

  /** The digest of the text abc begins with ba7816bf8f01 (FIPS 180-4, example values of NIST). */
  @Test
  void theRevisionTellsTheContent() {
    assertThat(Sheets.page("abc").select("header dd").eachText()).contains("ba7816bf8f01");
  }
}
