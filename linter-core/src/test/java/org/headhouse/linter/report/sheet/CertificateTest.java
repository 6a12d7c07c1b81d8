package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.draft.SiteUpdate;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.rule.RuleDescriptor;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a grower reads of a line, and when it is not called proved: common practice, no source. */
class CertificateTest {
  private static String heading(Document page) {
    return page.expectFirst("h1").text();
  }

  private static List<String> reasons(Document page) {
    return page.select(".reasons li").eachText();
  }

  @Test
  void aLineOfWhichAllIsProvedIsProved() {
    Document page = Papers.certificate(Papers.PROVED);
    assertThat(reasons(page)).isEmpty();
    assertThat(heading(page)).isEqualTo("Proved");
    assertThat(page.text()).contains("What makes this invalid", "It stays valid if");
    assertThat(page.select("tbody").get(0).text())
        .isEqualTo(
            "14 March 2026 Robin Oakfield the line 62 ohms 0.31 volts true-RMS hand meter, number"
                + " M-118, calibrated until 31 January 2027");
    assertThat(page.select("tbody").get(1).select("tr").eachText())
        .containsExactly(
            "Head House seen to close, in 61 seconds seen to close",
            "House 2 seen to close, in 62 seconds seen to close",
            "House 3 seen to close, in 63 seconds seen to close",
            "House 4 seen to close, in 64 seconds seen to close");
    assertThat(page.text()).contains("is to be proved again by 14 March 2027.");
  }

  /** Each takes away one thing that a proof needs. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "stage: commissioned | stage: planned | the line is planned",
        "by: Robin Oakfield | by: tbd | Nobody has signed",
        "date: 2026-03-14 | date: '?' | has no date",
        "date: 2026-03-14 | date: 2126-03-14 | still to come",
        "{unit: House 3, limit: 12 m/s, closed-in: 63 s}, | | Nobody saw wind close the vents at House 3.",
        "stale-response-seen: [Head House, House 2 | stale-response-seen: [Head House | Nobody saw lost readings close the vents at House 2.",
        "outdoor-readings-seen: [House 2, | outdoor-readings-seen: [ | Nobody saw the outdoor readings at House 2.",
        "pair-resistance: 62 ohm, idle-voltage: 0.29 V | idle-voltage: 0.29 V | resistance of the line was not measured at House 4.",
        "pair-resistance: 62 ohm | pair-resistance: 30 ohm | finds 1 open error",
        "address: 3 | address: 2 | open error"
      })
  void whatLacksOneThingIsNotProved(String from, @Nullable String to, String reason) {
    Document page = Papers.certificate(edited(from, to));
    assertThat(heading(page)).isEqualTo("Not proved");
    assertThat(reasons(page)).anyMatch(text -> text.contains(reason));
  }

  /** The record keeps what was seen before: the visit has to show all the same. */
  @Test
  void whatALaterVisitDidNotSeeIsNotProved() throws IOException {
    String list =
        """
        what,where,acceptable,found,by,date,remark
        site,proved,,,,,
        vents shut without readings (yes),House 2,,no,R.O.,2026-05-02,stayed open
        """;
    SiteUpdate update =
        SiteLinter.builder()
            .build()
            .visit(SiteInput.text("visit.csv", list), SiteInput.text("proved.yaml", Papers.PROVED));
    String after = new String(((SiteUpdate.Made) update).after(), StandardCharsets.UTF_8);
    Document page = Papers.certificate(after);
    assertThat(heading(page)).isEqualTo("Not proved");
    assertThat(reasons(page)).anyMatch(text -> text.contains("finds 1 open error"));
    Document accepted =
        Papers.certificate(
            after + "suppressions:\n  - {rule: draft.open-point, justification: It is old.}\n");
    for (Document each : List.of(page, accepted)) {
      assertThat(heading(each)).isEqualTo("Not proved");
      assertThat(each.text()).doesNotContain("It stays valid", "What makes this invalid");
      assertThat(reasons(each))
          .contains(
              "A visit left this open: vents shut without readings, House 2: not seen on 2026-05-02"
                  + " by R.O.; stayed open.");
      assertThat(each.select("tbody").get(1).select("tr").eachText())
          .contains(
              "House 2 seen to close, in 62 seconds seen once, but not on another visit",
              "House 3 seen to close, in 63 seconds seen to close");
    }
  }

  @Test
  void manyOpenPointsAreCounted() {
    String open = ": not seen on 2026-05-02 by R.O.\n";
    String site =
        Papers.PROVED
            + "# look: storm response: vents shut in, House 2"
            + open
            + ("# look: outdoor readings seen, House 2" + open).repeat(4);
    Document page = Papers.certificate(site);
    assertThat(reasons(page)).contains("Visits left 2 more points open.");
    assertThat(reasons(Papers.paper("-yearly", Papers.YEARLY, site)))
        .hasSize(4)
        .contains("Visits left 2 more points open.");
    assertThat(page.select("tbody").get(1).select("tr").eachText())
        .contains("House 2 seen once, but not on another visit seen to close");
  }

  private static String edited(String from, @Nullable String to) {
    assertThat(Papers.PROVED).contains(from);
    return Papers.PROVED.replaceFirst(
        Pattern.quote(from), Matcher.quoteReplacement(to == null ? "" : to));
  }

  @Test
  void aSiteWithoutARecordIsNotProved() {
    String site = Papers.PROVED.substring(0, Papers.PROVED.indexOf("commissioning:"));
    Document page = Papers.certificate(site);
    assertThat(heading(page)).isEqualTo("Not proved");
    assertThat(reasons(page)).contains("The file has no record of a proof.");
    assertThat(page.text()).contains("Nobody has proved the line");
  }

  /** A rule that is off cannot make it proved: what lacks is looked at all the same. */
  @Test
  void aRuleThatIsOffProvesNothing() {
    String policy =
        "format: 1\nrule-set: 1\nrules: {commissioning.response-unseen: {level: none},"
            + " commissioning.measured-off: {level: note}}\n";
    Document whole = Papers.paper("-certificate", policy, Papers.PROVED);
    assertThat(heading(whole)).isEqualTo("Proved, with exceptions");
    assertThat(reasons(whole))
        .containsExactly("2 rules not applied in full, by the policy: see below.");
    assertThat(whole.text())
        .contains("For every unit with vents, the record says that a storm closed them");
    Document lacking =
        Papers.paper(
            "-certificate",
            policy,
            edited("stale-response-seen: [Head House, ", "stale-response-seen: ["));
    assertThat(heading(lacking)).isEqualTo("Not proved");
  }

  @Test
  void whatIsAcceptedIsSaidAndAGapStaysOne() {
    String accepted =
        Papers.PROVED.replace("address: 4\n", "address: 5\n")
            + "suppressions:\n  - {rule: address.gap, unit: House 4, justification: Unit 4 is in"
            + " store., until: 2027-04-01}\n";
    Document page = Papers.certificate(accepted);
    assertThat(heading(page)).isEqualTo("Proved, with exceptions");
    assertThat(page.text()).contains("Reason: Unit 4 is in store. Until 1 April 2027.");
    String gap =
        edited("stale-response-seen: [Head House, ", "stale-response-seen: [")
            + "suppressions:\n  - {rule: commissioning.response-unseen, unit: Head House,"
            + " justification: Frost., until: 2027-04-01}\n";
    assertThat(heading(Papers.certificate(gap))).isEqualTo("Not proved");
  }

  /** From the day after its last one, what an exception hid is open. */
  @Test
  void anExceptionThatIsOverCountsAsOpen() {
    String site =
        edited("pair-resistance: 62 ohm", "pair-resistance: 30 ohm")
            + "suppressions: [{rule: commissioning.measured-off, justification: The meter was off.,"
            + " until: 2026-11-25}]\n";
    assertThat(heading(Papers.certificate(site))).isEqualTo("Proved, with exceptions");
    assertThat(heading(Papers.certificate(site.replace("2026-11-25", "2026-11-24"))))
        .isEqualTo("Not proved");
  }

  @Test
  void whatIsOverdueAndAMeterThatWasOverAreSaid() {
    Document page =
        Papers.certificate(
            Papers.PROVED
                .replace("date: 2026-03-14", "date: 2025-03-14")
                .replace("2027-01-31", "2025-01-31"));
    assertThat(heading(page)).isEqualTo("Proved, with exceptions");
    assertThat(reasons(page))
        .containsExactly(
            "The next proof was due on 14 March 2026.",
            "The calibration of a meter had ended on the day it was used.");
  }

  /** RFC 6234: the digest that the platform computes. */
  @Test
  void theFingerprintIsThatOfTheFile() throws Exception {
    String digits =
        HexFormat.of()
            .formatHex(
                MessageDigest.getInstance("SHA-256")
                    .digest(Papers.PROVED.getBytes(StandardCharsets.UTF_8)));
    assertThat(Papers.certificate(Papers.PROVED).expectFirst("code").text().replace(" ", ""))
        .isEqualTo(digits);
  }

  /** Growers know neither ids of rules nor the symbols of the trade. */
  @Test
  void itIsInWords() throws Exception {
    List<String> ids =
        SiteLinter.builder().build().rules().stream().map(RuleDescriptor::id).toList();
    for (Sheets sheets : List.of(Sheets.ofSamples(), Sheets.ofFaultySamples())) {
      sheets
          .pages()
          .forEach(
              (name, page) -> {
                if (name.endsWith("-certificate.html")) {
                  assertThat(page.text())
                      .as(name)
                      .doesNotContain(ids)
                      .doesNotContain("Ω", "≤", "≥");
                  assertThat(page.select("tbody").text()).doesNotContain(" V ", "mV", "m/s");
                }
              });
    }
  }

  @Test
  void aCustomerWithSeveralLinesHasACover() {
    Sheets one = Papers.of(Papers.YEARLY, Papers.PROVED);
    assertThat(one.files()).doesNotContainKey("proved-nurseries-cover.html");
    String other =
        Papers.PROVED
            .replace("site: proved", "site: other")
            .replace("by: Robin Oakfield", "by: tbd");
    Document cover =
        Jsoup.parse(
            Papers.of(Papers.YEARLY, Papers.PROVED, other).file("proved-nurseries-cover.html"));
    assertThat(cover.expectFirst(".lead").text()).startsWith("1 of 2 lines is proved.");
    assertThat(cover.select("tbody td:nth-child(2)").eachText())
        .containsExactly("Proved", "Not proved");
    assertThat(cover.select("tbody td:nth-child(4)").eachText())
        .containsExactly("14 March 2027", "now");
    assertThat(cover.select("a").eachAttr("href"))
        .contains("proved-certificate.html", "other-certificate.html");
  }

  /**
   * A line that is not proved is due now, whatever day the policy gives, and nobody signs for it.
   */
  @Test
  void whatIsNotProvedIsDueNow() {
    Document page = Papers.certificate(Papers.PROVED.replace("by: Robin Oakfield", "by: tbd"));
    assertThat(page.expectFirst("h1").text()).isEqualTo("Not proved");
    assertThat(page.text())
        .contains("The line is to be proved now", "Who has read that it is not proved")
        .doesNotContain("to be proved again by", "Who proved the line");
    assertThat(Papers.certificate(Papers.PROVED).text())
        .contains("is to be proved again by 14 March 2027", "Who proved the line");
  }

  /** The record of a line that is planned again was made of another state of it. */
  @Test
  void aPlannedLineHasNothingSeen() {
    Document page =
        Papers.certificate(Papers.PROVED.replace("stage: commissioned", "stage: planned"));
    assertThat(page.select("tbody").get(1).select("td").eachText())
        .hasSize(2 * 4)
        .containsOnly("seen in an earlier state of the line only");
    assertThat(page.text()).doesNotContain("seen to close");
  }

  /** Somebody saw vents close in a house that has none: one of the two is wrong. */
  @ParameterizedTest
  @CsvSource({"'', true", "storm-response-seen, true", "stale-response-seen, true", "both, false"})
  void aHouseWithoutVentsThatWereSeenIsMarked(String gone, boolean marked) {
    String site =
        Papers.PROVED.replaceFirst("(?s)(unit: House 3\n.*?)vents: roof", "$1vents: none");
    if (gone.equals("both") || gone.equals("storm-response-seen")) {
      site = site.replace("{unit: House 3, limit: 12 m/s, closed-in: 63 s}, ", "");
    }
    if (gone.equals("both") || gone.equals("stale-response-seen")) {
      site = site.replace("[Head House, House 2, House 3,", "[Head House, House 2,");
    }
    Document page = Papers.certificate(site);
    assertThat(heading(page)).isEqualTo(marked ? "Proved, with exceptions" : "Proved");
    String no = "No vents by the file, but seen to close by its record: House 3.";
    if (marked) {
      assertThat(page.text()).contains(no).doesNotContain("No vents: ");
    } else {
      assertThat(page.text()).contains("No vents: House 3.").doesNotContain("by the file");
    }
    Document card = Papers.paper("-night-card", Papers.YEARLY, site);
    assertThat(card.select(".first li").eachText().toString().contains("House 3"))
        .isEqualTo(marked);
    Document yearly = Papers.paper("-yearly", Papers.YEARLY, site);
    assertThat(yearly.text().contains("no vents by the file, but seen to close: look"))
        .isEqualTo(marked);
    Document sheets = Sheets.page(site);
    assertThat(sheets.select("table.vents th[scope=row]").eachText().toString().contains("House 3"))
        .isEqualTo(marked);
    assertThat(sheets.select("#proving li:contains(stale after)").text().contains("House 3"))
        .isEqualTo(marked);
  }

  @Test
  void whereNoUnitHasVentsTheRecordStillCounts() {
    Document page = Papers.certificate(Papers.PROVED.replace("vents: roof", "vents: none"));
    assertThat(page.text()).contains("seen to close by its record").doesNotContain("No unit moves");
    assertThat(Sheets.page(Papers.PROVED.replace("vents: roof", "vents: none")).text())
        .contains("Vents: wind, rain, and readings that stop");
  }

  /** Without a reading of the wind, the wind that somebody saw close the vents was none of it. */
  @Test
  void aHouseWithoutAReadingOfTheWindIsMarked() {
    String site =
        Papers.PROVED.replaceFirst(
                "(?s)(unit: House 3\n.*?)outdoor: head",
                "$1outdoor: {temperature: head, wind-speed: none, rain: head}")
            + "suppressions: [{rule: outdoor.not-from-head, unit: House 3, justification: Low.}]\n";
    Document page = Papers.certificate(site);
    assertThat(reasons(page))
        .contains(
            "The file gives no reading of the wind to House 3: wind does not close the vents there.");
    assertThat(page.select("tbody").get(1).select("tr").eachText())
        .contains(
            "House 3 seen to close, in 63 seconds, though the file gives it no reading of the wind"
                + " seen to close",
            "House 4 seen to close, in 64 seconds seen to close");
  }

  @ParameterizedTest
  @CsvSource({
    "1 s, in 1 second",
    "1 min, in 1 minute",
    "1.0 s, in 1.0 seconds",
    "11 s, in 11 seconds",
    "21 s, in 21 seconds"
  })
  void oneIsNotSeveral(String written, String spoken) {
    assertThat(Papers.certificate(edited("closed-in: 63 s", "closed-in: " + written)).text())
        .contains("House 3 seen to close, " + spoken + " seen");
  }

  /** The page of one site never takes the place of a paper of another. */
  @Test
  void noPaperTakesTheNameOfAPage() {
    Sheets sheets =
        Sheets.of(
            Papers.linter(Papers.YEARLY),
            Stream.of("proved", "proved-certificate", "proved-night-card")
                .map(
                    id ->
                        SiteInput.text(
                            id + ".yaml", Papers.PROVED.replace("site: proved", "site: " + id))),
            Measure.METRIC,
            Paper.A4);
    assertThat(sheets.files().keySet().stream().filter(name -> name.endsWith(".html")))
        .hasSize(3 * 7 + 2)
        .contains("proved-certificate-2.html", "proved-certificate-2-certificate.html");
  }
}
