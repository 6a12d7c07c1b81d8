package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.SiteText;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/**
 * The table on the sheet. Computed by hand: a broadcast of 12 registers at 9600 bit/s takes 38 ms
 * from its first bit to its last; nothing is polled.
 */
class StormTableTest {
  private static final String CLOSES = "on-stale-readings: close";

  private static String site(String station) {
    return new SiteText()
        .station("[light, wind-speed], averaging: 10 s" + station)
        .broadcast(12, "5 s")
        .unit("120 ohm", "10 m", "vents: roof", CLOSES, "close-time: 90 s")
        .unit("none", "10 m", "vents: roof", CLOSES, "stale-after: 60 s", "close-time: 90 s")
        .unit("none", "10 m", "vents: roof", CLOSES, "stale-after: 90 s", "close-time: 90 s")
        .unit("none", "10 m", "vents: roof", "on-stale-readings: hold", "close-time: 90 s")
        .unit("none", "10 m", "vents: roof", CLOSES, "stale-after: 60 s")
        .unit("none", "10 m", "vents: roof", CLOSES, "stale-after: 5 min")
        .unit("none", "10 m", "vents: roof", "stale-after: 60 s", "close-time: 90 s")
        .unit("none", "10 m", "vents: none")
        .unit("120 ohm", "")
        .toString();
  }

  private static List<List<String>> rows(Document page) {
    Element heading =
        page.select("#figures h3").stream()
            .filter(one -> one.text().equals("From the gust to closed vents"))
            .findFirst()
            .orElseThrow();
    return heading.nextElementSiblings().select("table").get(0).select("tbody tr").stream()
        .map(row -> row.children().stream().map(Element::text).toList())
        .toList();
  }

  @Test
  void eachUnitHasItsParts() {
    String limit = "at most 3 min";
    String unknown = "not known";
    String dead = "60.0 s dead line, stale after 60 s";
    assertThat(rows(Sheets.page(site(", close-within: 3 min"))))
        .containsExactly(
            List.of(
                "Head House",
                "10.0 s",
                "none the station is wired to it",
                "90.0 s",
                "100.0 s",
                limit,
                "within limit"),
            List.of("Bay 2", "10.0 s", dead, "90.0 s", "160.0 s", limit, "within limit"),
            List.of(
                "Bay 3",
                "10.0 s",
                "90.0 s dead line, stale after 90 s",
                "90.0 s",
                "190.0 s",
                limit,
                "outside limit"),
            List.of(
                "Bay 4",
                "10.0 s",
                "10.0 s age of the reading; on a dead line it stays open (hold)",
                "90.0 s",
                "110.0 s",
                limit,
                "stays open on a dead line"),
            List.of("Bay 5", "10.0 s", dead, unknown, unknown, limit, unknown),
            List.of(
                "Bay 6",
                "10.0 s",
                "300.0 s dead line, stale after 5 min",
                unknown,
                "at least 310.0 s",
                limit,
                "outside limit"),
            List.of("Bay 7", "10.0 s", dead, "90.0 s", "160.0 s", limit, unknown),
            List.of(
                "Bay 9",
                unknown,
                unknown + " the file does not say whether it moves vents",
                unknown,
                unknown,
                limit,
                unknown));
  }

  @Test
  void withoutALimitTheSumIsShownAllTheSame() {
    List<List<String>> rows = rows(Sheets.page(site("")));
    assertThat(rows.get(1))
        .containsExactly(
            "Bay 2",
            "10.0 s",
            "60.0 s dead line, stale after 60 s",
            "90.0 s",
            "160.0 s",
            "",
            "no limit");
  }

  /** Nothing is computed where no unit moves vents. */
  @Test
  void withoutVentsThereIsNoTable() {
    Document page =
        Sheets.page(
            new SiteText().unit("120 ohm", "10 m", "vents: none").unit("120 ohm", "").toString());
    assertThat(page.select("#figures h3").eachText())
        .doesNotContain("From the gust to closed vents");
  }
}
