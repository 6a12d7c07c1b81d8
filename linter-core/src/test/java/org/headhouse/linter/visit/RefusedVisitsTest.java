package org.headhouse.linter.visit;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.draft.SiteUpdate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lists of which nothing is made: what is asked about, and where. */
class RefusedVisitsTest {
  private static final String OHMS = "pair resistance (ohm),Propagation,,62,R.O.,2026-03-14,";
  private static final String SEEN =
      "outdoor readings seen (yes),Seedling North,,yes,R.O.,2026-03-14,";

  private static String fault(String... rows) {
    List<String> faults = Visits.faults(Visits.list(rows), Visits.SITE);
    assertThat(faults).hasSize(1);
    return faults.get(0);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "53.6 to 66.3 ohm | is what is acceptable",
        "60-65 | is what is acceptable",
        "at least 60 ohm | is what is acceptable",
        "=A1 | begins like a formula",
        "@SUM(A1) | begins like a formula",
        "-A1+62 | begins like a formula",
        "`\"1,062\"` | can be read in two ways",
        "yes | is not understood",
        "no | is not understood",
        "62 V | is not understood",
        "-62 | is not understood",
        "6.2E1 | is not understood",
        "1 062 | is not understood",
        "<62 | is not understood",
        "62? | is not understood",
        "1.062.000 | is not understood",
        "6/2 | is not understood"
      })
  void aResistanceIsAskedAbout(String found, String fact) {
    assertThat(fault(OHMS.replace(",62,", "," + found + ",")))
        .startsWith("visit.csv:3:36: error: ")
        .contains(fact);
  }

  /** The record would say the opposite of what was seen. */
  @ParameterizedTest
  @CsvSource({
    "hold, vents shut without readings, to shut its vents",
    "alarm, vents shut without readings, to shut its vents",
    "close, vents stay where they are without readings, to leave its vents where they are",
    "close-and-alarm, vents stay where they are without readings, to leave its vents where they are"
  })
  void whatTheFileDoesNotSetIsAskedAbout(String action, String what, String seen) {
    String row = what + ",Hardening Bay,,yes,R.O.,2026-03-14,";
    String site = Visits.SITE.replace("on-stale-readings: close", "on-stale-readings: " + action);
    assertThat(Visits.faults(Visits.list(row), site))
        .singleElement()
        .asString()
        .contains("\"Hardening Bay\" was seen " + seen);
    Visits.made(Visits.list(row.replace(",yes,", ",no,")).getBytes(UTF_8), site.getBytes(UTF_8));
  }

  /** A point before three digits, in a list whose decimal sign is the comma. */
  @Test
  void thousandsAreAskedAbout() {
    assertThat(
            Visits.faults(
                (Visits.HEADINGS + Visits.OF_SITE + OHMS.replace("62", "1.062")).replace(",", ";"),
                Visits.SITE))
        .containsExactly(
            "visit.csv:3:36: error: the value \"1.062\" can be read in two ways: a point before"
                + " three digits marks thousands where the comma is the decimal sign; write 1062 or"
                + " 1.0620, whichever is meant");
  }

  @ParameterizedTest
  @ValueSource(strings = {"1", "TRUE", "maybe", "yes?", "oui", "✗", "yes yes", "62 ohm"})
  void whetherItWasSeenIsAskedAbout(String found) {
    assertThat(fault(SEEN.replace(",yes,", "," + found + ",")))
        .isEqualTo(
            "visit.csv:3:45: error: it is not understood whether \""
                + found
                + "\" is a yes: what nobody saw must not look as if it was seen; write yes where it"
                + " was seen, and no, or nothing, where it was not");
  }

  @ParameterizedTest
  @CsvSource({
    "1:25, is not understood",
    "85 ms, is not understood",
    "at most 90 s, is what is acceptable"
  })
  void aTimeIsAskedAbout(String found, String fact) {
    assertThat(
            fault(
                "storm response: vents shut in (s),Seedling North,at most 90 s,"
                    + found
                    + ",R.O.,2026-03-14,"))
        .contains(fact);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "03/04/2026 | the date \"03/04/2026\" can be read in two ways: some write the day first,"
            + " and others the month; write 2026-04-03 or 2026-03-04, whichever is meant",
        "2026-02-29 | the date \"2026-02-29\" is no day of the calendar: a record says on which day"
            + " it was proved; write year, month and day, such as 2026-03-14",
        "=TODAY() | the cell \"=TODAY()\" begins like a formula"
      })
  void aDateIsAskedAbout(String date, String said) {
    assertThat(fault(OHMS.replace("2026-03-14", date)))
        .startsWith("visit.csv:3:44: error: " + said);
  }

  /** Only what is in the row counts, also where the first one is signed. */
  @Test
  void eachRowIsSigned() {
    assertThat(Visits.faults(Visits.list(OHMS, SEEN.replace("R.O.,2026-03-14", ",")), Visits.SITE))
        .hasSize(2)
        .allSatisfy(one -> assertThat(one).contains("fill in by and date in each row"));
    assertThat(fault(OHMS, SEEN.replace("R.O.", "")))
        .startsWith("visit.csv:4:49: error: nobody signed the row");
    assertThat(fault(OHMS, SEEN.replace("2026-03-14", "")))
        .startsWith("visit.csv:4:54: error: the row has no date");
    assertThat(fault(OHMS, SEEN.replace(",yes,R.O.,2026-03-14,", ",yes,R.O.")))
        .startsWith("visit.csv:4:53: error: the row has no date");
    assertThat(fault(OHMS, SEEN.replace("R.O.", "=A1"))).contains("begins like a formula");
    assertThat(fault(OHMS, SEEN.replace("R.O.", "\"R.O.\nK.A.\""))).contains("hidden characters");
    assertThat(fault(OHMS, SEEN.replace("R.O.", "R".repeat(201)))).contains("is too long");
  }

  @Test
  void aRemarkOfOneOfSeveralVisitsIsAskedAbout() {
    assertThat(
            fault(
                OHMS,
                SEEN.replace("03-14", "03-15"),
                "outdoor readings seen (yes),Hardening Bay,,,,,dark"))
        .startsWith("visit.csv:5:47: error: nobody can tell of which visit \"dark\" is");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "outdoor readings seen (yes),Hardening Bai | the site has no \"Hardening Bai\"",
        "pair resistance (ohm),East Boiler Room | the site has no \"East Boiler Room\"",
        "`outdoor readings seen (yes),\"East Boiler Room, side out\"` | is no unit",
        "outdoor readings,Hardening Bay | \"outdoor readings\" is not known",
        "moisture (%),Hardening Bay | \"moisture (%)\" is not known",
        ",Hardening Bay | the row does not say what it is about"
      })
  void aRowIsOfThisChain(String row, String fact) {
    String found = row.startsWith("pair") ? "62" : "yes";
    assertThat(fault(row + ",," + found + ",R.O.,2026-03-14,")).contains(fact);
  }

  /** One that is blank is left alone: the site may have changed since the list was made. */
  @Test
  void aBlankRowOfWhatIsGoneIsLeftAlone() {
    assertThat(Visits.after(Visits.SITE, "outdoor readings seen (yes),Palms,,,,,"))
        .isEqualTo(Visits.SITE);
  }

  @Test
  void twoRowsOfOneThingAreAskedAbout() {
    assertThat(fault(OHMS, OHMS.replace("62", "63")))
        .startsWith("visit.csv:4:23: error: the list has pair resistance at \"Propagation\" twice");
    assertThat(Visits.after(Visits.SITE, OHMS, OHMS)).isEqualTo(Visits.after(Visits.SITE, OHMS));
  }

  @Test
  void theListIsOfThisSite() {
    String list = Visits.list(OHMS);
    assertThat(Visits.faults(list.replace("elm-row", "oak-row"), Visits.SITE))
        .containsExactly(
            "visit.csv:2:6: error: the list is of the site \"oak-row\", and not of \"elm-row\":"
                + " what was found at one site proves nothing of another; name the file of that"
                + " site, or take the list of this one");
    assertThat(Visits.faults(list.replace(Visits.OF_SITE, ""), Visits.SITE))
        .singleElement()
        .asString()
        .contains("no row says which site the list is of");
    assertThat(Visits.faults("", Visits.SITE)).hasSize(1);
    assertThat(Visits.faults(list.replace("elm-row,,", "elm-row,,yes"), Visits.SITE))
        .singleElement()
        .asString()
        .contains("the row of the site has \"yes\" as what was found");
  }

  /** Two lists in one, of sites whose units have some names in common. */
  @ParameterizedTest
  @ValueSource(strings = {"", "first visit"})
  void everyRowOfASiteIsOfThisOne(String remark) {
    String list =
        Visits.list(OHMS).replace(Visits.OF_SITE, "site,elm-row,,,,," + remark + "\n")
            + "site,oak-row,,,,,\n"
            + "outdoor readings seen (yes),Hardening Bay,,yes,R.O.,2026-03-14,\n"
            + "outdoor readings seen (yes),Palms,,yes,R.O.,2026-03-14,\n";
    assertThat(Visits.faults(list, Visits.SITE))
        .singleElement()
        .asString()
        .startsWith("visit.csv:4:6: error: the list is of the site \"oak-row\"");
  }

  @Test
  void theColumnsAreThere() {
    assertThat(Visits.faults(Visits.list(OHMS).replaceFirst("found", "result"), Visits.SITE))
        .singleElement()
        .asString()
        .startsWith("visit.csv:1:1: error: no heading of the first row is \"found\"");
    assertThat(Visits.faults(Visits.list(OHMS).replaceFirst("remark", "by"), Visits.SITE))
        .anyMatch(one -> one.contains("the heading \"by\" is there twice"));
    // A decimal comma without quotes, where commas separate cells.
    assertThat(fault(OHMS.replace(",62,", ",61,5,") + "warm"))
        .startsWith("visit.csv:3:57: error: the cell \"warm\" has no heading");
  }

  @Test
  void aRecordIsNeverChanged() {
    String site = Visits.after(Visits.SITE, OHMS, SEEN);
    assertThat(Visits.faults(Visits.list(OHMS.replace("62", "63")), site))
        .containsExactly(
            "visit.csv:3:36: error: the record of that day has 62 ohm, and not \"63\": a list never"
                + " changes what R.O. recorded on 2026-03-14; correct the cell, or empty it and"
                + " correct the record by hand");
    assertThat(Visits.faults(Visits.list(SEEN.replace(",yes,", ",no,")), site))
        .singleElement()
        .asString()
        .contains("the record of that day has seen, and not \"no\"");
  }

  /** Where the record would have to be written anew, somebody does it by hand. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "commissioning: {date: 2026-03-01, by: K.A.}\n",
        "commissioning:\n",
        "commissioning: yes\n",
        "commissioning:\n  date: 2026-03-01\n",
        "commissioning:\n  date: \"?\"\n  by: \"?\"\n",
        "commissioning:\n  date: 2026-03-01\n  by: tbd\n",
        "commissioning:\n  date: 2026-03-01\n  by: K.A.\n  renewed: []\n",
        "commissioning:\n  date: 2026-03-01\n  by: K.A.\n  renewed: [{date: 2026-03-02, by: K.A.}]\n",
        "commissioning:\n  date: 2026-03-01\n  by: K.A.\n  renewed:\n    - K.A.\n",
        "commissioning:\n  date: 2026-03-01\n  by: K.A.\n  renewed:\n    -\n      - a\n",
        "shared: &r\n  date: 2026-03-01\n  by: K.A.\ncommissioning: *r\n",
        "shared: &r\n  date: 2026-03-01\n  by: K.A.\ncommissioning:\n  <<: *r\n  measured: {}\n",
        "commissioning: &r\n  date: 2026-03-01\n  by: K.A.\nshared: *r\n"
      })
  void aRecordThatIsNoBlockIsLeftAlone(String record) {
    assertThat(Visits.faults(Visits.list(OHMS), Visits.SITE + record))
        .singleElement()
        .asString()
        .startsWith("elm-row.yaml:");
  }

  @Test
  void aSiteInBracesIsLeftAlone() {
    assertThat(Visits.faults(Visits.list(OHMS), "{site: elm-row, chain: [{unit: Propagation}]}"))
        .singleElement()
        .asString()
        .startsWith("elm-row.yaml:1:1: error: the site is not written with one key a line");
  }

  @ParameterizedTest
  @ValueSource(strings = {"chain: [\n", "", "a: 1\n---\nb: 1\n", "site: elm-row\n"})
  void aSiteThatCannotBeReadIsReported(String site) {
    assertThat(Visits.faults(Visits.list(OHMS), site))
        .singleElement()
        .asString()
        .startsWith("elm-row.yaml:1:1: error: the site cannot be read");
  }

  /** The é of Latin 1, and half a character of UTF-16. */
  @Test
  void bytesOfAnotherCodeAreReported() {
    byte[] site = Visits.SITE.getBytes(UTF_8);
    assertThat(Visits.update(Visits.list(OHMS + "gel\u00E9").getBytes(ISO_8859_1), site))
        .isInstanceOf(SiteUpdate.Refused.class);
    assertThat(Visits.update(new byte[] {(byte) 0xFE, (byte) 0xFF, 0}, site))
        .isInstanceOf(SiteUpdate.Refused.class);
  }

  @Test
  void allIsReportedAtOnce() {
    assertThat(
            Visits.faults(
                Visits.list(OHMS.replace("62", "?"), SEEN.replace("2026-03-14", "soon")),
                Visits.SITE))
        .hasSize(2);
  }
}
