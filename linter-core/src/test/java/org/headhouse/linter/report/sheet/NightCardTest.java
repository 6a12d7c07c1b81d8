package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is closed by hand first where readings stop: common practice, no source. */
class NightCardTest {
  private static Document card(String site) {
    return Papers.paper("-night-card", Papers.YEARLY, site);
  }

  private static List<String> under(Document page, String heading) {
    Element found = page.selectFirst("h3:contains(" + heading + ")");
    return found == null
        ? List.of()
        : Objects.requireNonNull(found.nextElementSibling()).children().eachText();
  }

  private static String house3(String from, String to) {
    int start = Papers.PROVED.indexOf("unit: House 3");
    String rest = Papers.PROVED.substring(start);
    assertThat(rest).contains(from);
    return Papers.PROVED.substring(0, start) + rest.replaceFirst(Pattern.quote(from), to);
  }

  /**
   * A reading may just have come when the line fails: 40 s until it is stale, one broadcast and
   * poll more, and 62, 63, 64 s by the watch, rounded up to a step of 5 s.
   */
  @Test
  void theHeadUnitStaysOpenAndTheOthersClose() {
    Document page = card(Papers.PROVED);
    assertThat(under(page, "by hand first"))
        .containsExactly("Head House: the head unit itself does not close");
    assertThat(under(page, "by themselves"))
        .containsExactly("House 2, House 3, House 4: shut within 105 seconds");
    assertThat(page.text()).contains("Close every house by hand.");
  }

  /** What a later visit did not see is an open point of the file. */
  @Test
  void whileAPointIsOpenNoHouseCountsAsSeen() {
    Document page =
        card(Papers.PROVED + "# look: vents shut without readings, House 3: not seen\n");
    assertThat(under(page, "not proved"))
        .containsExactly(
            "House 2, House 3, House 4: if not shut within 105 seconds, close by hand");
    assertThat(under(page, "by themselves")).isEmpty();
  }

  /** What is not known counts as open. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "on-stale-readings: close | on-stale-readings: hold | the vents stay where they are",
        "on-stale-readings: close | on-stale-readings: alarm | the vents stay where they are",
        "on-stale-readings: close | firmware: '1' | what the vents do is not known",
        "stale-after: 40 s | firmware: '1' | after how long the vents close is not known",
        "vents: roof | firmware: '1' | whether there are vents is not known",
        "outdoor: head | outdoor: {temperature: head, wind-speed: local, rain: head} | local readings go on",
        "outdoor: head | outdoor: {temperature: head, wind-speed: none, rain: head} | no reading of the wind is used",
        "outdoor: head | outdoor: {temperature: head, rain: head} | where the readings come from is not known",
        "outdoor: head | firmware: '1' | where the readings come from is not known"
      })
  void whatDoesNotCloseIsClosedByHand(String from, String to, String why) {
    Document page = card(house3(from, to));
    assertThat(under(page, "by hand first")).contains("House 3: " + why);
    assertThat(under(page, "by themselves").toString()).doesNotContain("House 3");
  }

  @Test
  void withoutABroadcastNothingIsKnown() {
    Document page =
        card(Papers.PROVED.replace("  traffic: {broadcast: {registers: 12, every: 5 s}}\n", ""));
    assertThat(under(page, "by hand first"))
        .contains("House 2, House 3, House 4: how often readings come is not known");
    assertThat(under(page, "by themselves")).isEmpty();
  }

  @Test
  void whatNobodySawIsLookedAt() {
    Document page =
        card(
            Papers.PROVED.replace(
                "stale-response-seen: [Head House, House 2, House 3,",
                "stale-response-seen: [Head House, House 2,"));
    assertThat(under(page, "not proved"))
        .containsExactly("House 3: if not shut within 105 seconds, close by hand");
    assertThat(under(page, "by themselves"))
        .containsExactly("House 2, House 4: shut within 105 seconds");
  }

  /** A record that is not of a line in use says nothing of it. */
  @Test
  void onAPlannedLineNothingWasSeen() {
    Document page = card(Papers.PROVED.replace("stage: commissioned", "stage: planned"));
    assertThat(under(page, "by themselves")).isEmpty();
    assertThat(under(page, "not proved")).hasSize(1);
  }

  /**
   * MODBUS over Serial Line V1.02, section 3.4.6: some devices need the pair to be polarized while
   * nobody sends. Without the supply that does so, such devices are not sure to get anything.
   */
  @ParameterizedTest
  @CsvSource({
    "needed, House 3, true",
    // Nobody knows whether they need it.
    "'', House 3, true",
    "not-needed, House 3, false",
    // Without the head unit there are no readings at all.
    "needed, Head House, false"
  })
  void theOthersDoNotGoOnWithoutTheirBias(String need, String at, boolean named) {
    Document page = card(needingBias(need, at));
    String text =
        Objects.requireNonNull(page.selectFirst("h2:contains(one house fails) + p")).text();
    String others =
        named
            ? "The others go on, but not if it is House 3: its supply also feeds the bias, and without"
                + " bias perhaps no house gets readings. Then treat all others as under 2, in the same"
                + " order."
            : "The others go on.";
    assertThat(text)
        .isEqualTo("Its vents stay where they are. Close that house by hand. " + others);
  }

  /** A line of which one receiver needs bias, or needs none. */
  static String needingBias(String need, String at) {
    String meter =
        "  - equipment: Meter\n    address: 57\n    broadcasts: ignored\n    conductors: [A, B, C]\n"
            + "    isolated: true\n    termination: none\n    cable-to-next: 8 m\n"
            + (need.isEmpty() ? "" : "    idle-bias: " + need + "\n");
    return Papers.PROVED
        .replace("{at: Head House, resistors", "{at: " + at + ", resistors")
        .replace("  - unit: House 2\n", meter + "  - unit: House 2\n");
  }

  /** Units that move no vents are on no list; nor is the card empty. */
  @Test
  void aLineWithoutVentsSaysSo() {
    Document page =
        card(
            Papers.PROVED
                .replace("vents: roof", "vents: none")
                .replaceAll("(?m)^  (?:storm|stale)-response-seen: .*\n", ""));
    assertThat(page.select("h3")).isEmpty();
    assertThat(page.text()).contains("No unit of this line moves vents");
  }
}
