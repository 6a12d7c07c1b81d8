package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.stream.Stream;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.report.Paper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** The page over all sites: whose they are, which is worst, what is due. */
class IndexPageTest {
  private static final String YEARLY =
      """
      format: 1
      rule-set: 1
      rules: {commissioning.retest-due: {parameters: {every: 1 year}}}
      """;

  private static Document index(String policy, SiteInput... sites) throws IOException {
    SiteLinter linter =
        SiteLinter.builder()
            .deviceTypes(Sheets.SAMPLE_TYPES)
            .policy(SiteInput.text("linter.yaml", policy))
            .clock(Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC))
            .build();
    Sheets sheets = Sheets.of(linter, Stream.of(sites), Measure.METRIC, Paper.A4);
    return Jsoup.parse(sheets.file("index.html"));
  }

  private static SiteInput site(String id, String customer, String... more) {
    String text = Example.SITE.replace("site: example", "site: " + id + "\ncustomer: " + customer);
    for (int i = 0; i + 1 < more.length; i += 2) {
      assertThat(text).contains(more[i]);
      text = text.replace(more[i], more[i + 1]);
    }
    return SiteInput.text(id + ".yaml", text);
  }

  private static SiteInput commissioned(String id, String date) {
    return site(
        id,
        "growers",
        "stage: planned",
        "stage: commissioned\ncommissioning: {date: " + date + ", by: R.O.}");
  }

  private static SiteInput proved(String id, String date) {
    String text =
        Papers.PROVED
            .replace("site: proved", "site: " + id)
            .replace("Proved Nursery", id)
            .replace("proved-nurseries", "growers")
            .replace("date: 2026-03-14", "date: " + date);
    return SiteInput.text(id + ".yaml", text);
  }

  @Test
  void sitesAreGroupedByCustomerTheWorstFirst() throws Exception {
    Document index =
        index(
            YEARLY,
            site("beech", "good-growers"),
            site("cedar", "bad-growers"),
            site("alder", "bad-growers", "address: 3", "address: 2"),
            site(
                "elm",
                "worse-growers",
                "address: 3",
                "address: 2",
                "termination: none",
                "termination: 120 ohm"),
            SiteInput.text("fern.yaml", "format: ["));
    assertThat(index.select("#sites .group").eachText())
        .containsExactly("Not readable", "worse-growers", "bad-growers", "good-growers");
    assertThat(index.select("#sites tbody tr:not(.group) th a, #sites tbody th > bdi").eachText())
        .filteredOn(text -> !text.endsWith("growers") && !text.startsWith("Not"))
        .startsWith("fern.yaml")
        .containsSubsequence("elm", "alder", "cedar", "beech");
  }

  @Test
  void whatIsDueIsListed() throws Exception {
    Document index =
        index(
            YEARLY,
            proved("later", "2026-11-01"),
            proved("soon", "2026-02-20"),
            proved("overdue", "2025-11-24"),
            proved("today", "2025-11-25"),
            commissioned("open", "\"?\""),
            commissioned("incomplete", "2026-11-01"),
            site("planned", "growers"));
    assertThat(index.select("#due tbody tr").eachText())
        .containsExactly(
            "open growers now: it is not proved, as its certificate says",
            "incomplete growers now: it is not proved, as its certificate says",
            "overdue growers overdue since 2026-11-24",
            "today growers due on 2026-11-25",
            "soon growers due on 2027-02-20");
    assertThat(index.select("#sites td.date").eachText())
        .containsExactlyInAnyOrder(
            "2027-11-01", "2027-02-20", "2026-11-24", "2026-11-25", "now", "now");
  }

  @Test
  void withoutAPeriodThePageSaysSo() throws Exception {
    String silent = "format: 1\nrule-set: 1\n";
    Document index = index(silent, proved("one", "2020-01-01"));
    assertThat(index.select("#due")).isEmpty();
    assertThat(index(silent, commissioned("one", "2020-01-01")).select("#due tbody tr").eachText())
        .containsExactly("one growers now: it is not proved, as its certificate says");
    assertThat(index.text()).contains("Not known: the policy does not say how often");
    assertThat(index(YEARLY, site("one", "growers")).text())
        .contains("No commissioned line is due within three months.");
  }

  @Test
  void typesAndFirmwareAreCounted() throws Exception {
    String typed = "address: 2\n    device-type: eight-way\n    firmware: \"3.2\"\n";
    Document index =
        index(
            YEARLY,
            site("one", "a", "address: 2\n", typed),
            site(
                "two",
                "b",
                "address: 2\n",
                typed,
                "address: 3\n",
                "address: 3\n    device-type: eight-way\n    firmware: \"3.2\"\n"));
    assertThat(index.select("#firmware tbody tr").eachText())
        .containsExactly("eight-way 3.2 3 2", "type not in the file firmware not in the file 3 2");
  }

  /** A commissioned line needs no order. */
  @Test
  void materialsOfPlannedLinesAreAddedUp() throws Exception {
    Document index =
        index(
            YEARLY,
            site("one", "a"),
            site("two", "b", "    cable-to-next: 60 m\n", ""),
            commissioned("three", "2026-11-01"));
    assertThat(index.select("#planned tbody tr").eachText())
        .containsExactly(
            "Cable 24 AWG, shielded, 120 ohm, pair at least 140 m at least 154 m",
            "Terminators 120 ohm 4 4",
            "Bias resistors 510 ohm 4 4",
            "Communication modules for a device type that is not written 6 6");
  }
}
