package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.report.Paper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a file holds is text on a page, and nothing else. */
class HostileTextTest {
  private static final Document PLAIN = Sheets.page(org.headhouse.linter.Example.SITE);

  /** Of Unicode's bidirectional algorithm; the drawings put them around names. */
  private static final int FIRST_STRONG_ISOLATE = 0x2068;

  private static final int POP_ISOLATE = 0x2069;

  static List<String> sites() {
    return List.of(Hostile.site(), Hostile.tooLong());
  }

  @ParameterizedTest
  @MethodSource("sites")
  void nothingOfItBecomesMarkup(String site) {
    Document page = Sheets.page(site);
    assertThat(page.select("script, img, iframe, object, embed, link, base, form")).isEmpty();
    assertThat(page.select("head style")).hasSize(1);
    assertThat(page.select("meta")).hasSameSizeAs(PLAIN.select("meta"));
    for (Element element : page.getAllElements()) {
      for (Attribute attribute : element.attributes()) {
        assertThat(attribute.getKey()).doesNotStartWith("on").isNotEqualTo("style");
      }
    }
    assertThat(style(page)).isEqualTo(style(PLAIN));
  }

  /** The style sheet holds nothing of the file but its name, its fingerprint and a count. */
  private static String style(Document page) {
    String style = page.select("head style").html();
    String foot = "content: \"example, SHA-256 [0-9a-f]{12}, (no|\\d+) open errors?\"";
    assertThat(style).containsPattern(foot);
    return style.replaceFirst(foot, "");
  }

  @ParameterizedTest
  @MethodSource("sites")
  void nothingHidesOrTurnsTheTextAroundIt(String site) {
    assertThat(Sheets.html(site).codePoints().boxed().toList())
        .filteredOn(c -> c != '\n' && c != FIRST_STRONG_ISOLATE && c != POP_ISOLATE)
        .noneMatch(c -> Character.getType(c) == Character.FORMAT || Character.isISOControl(c));
  }

  /** What is quoted is cut to what a sheet has room for; the record must hold names whole. */
  @ParameterizedTest
  @MethodSource("sites")
  void noTextIsLongerThanASheetHasRoomFor(String site) {
    for (Element element : Sheets.page(site).body().getAllElements()) {
      if (!element.is("pre, pre *")) {
        assertThat(element.ownText().length()).as(element.cssSelector()).isLessThan(3_100);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("sites")
  void nothingOfItBecomesMarkupOfLabels(String site) {
    String html = Sheets.materials(site, Paper.A4);
    Document page = Jsoup.parse(html);
    assertThat(page.select("script, img, iframe, object, embed, link, base, form")).isEmpty();
    for (Element element : page.getAllElements()) {
      for (Attribute attribute : element.attributes()) {
        assertThat(attribute.getKey()).doesNotStartWith("on").isNotEqualTo("style");
      }
    }
    assertThat(html.codePoints().boxed().toList())
        .filteredOn(c -> c != '\n')
        .noneMatch(c -> Character.getType(c) == Character.FORMAT || Character.isISOControl(c));
  }

  @Test
  void namesOnLabelsAreWhole() {
    Document page = Jsoup.parse(Sheets.materials(Hostile.site(), Paper.A4));
    assertThat(page.select("#item-labels .name").eachText())
        .hasSize(3)
        .contains(Hostile.QUOTES, Hostile.LONG);
    assertThat(page.select("#item-labels .quiet").eachText()).containsOnly(Hostile.SCRIPT);
  }

  @Test
  void namesAreShownAsTheyAre() {
    Document page = Sheets.page(Hostile.site());
    assertThat(page.select("h1").text()).isEqualTo(Hostile.SCRIPT);
    assertThat(page.select("#landing tbody th > bdi").eachText()).contains(Hostile.QUOTES);
    assertThat(page.select("#landing tbody th > bdi").get(1).text())
        .startsWith("\uFFFDgnp.yab\uFFFD \uFFFDleft");
  }

  @Test
  void theIndexShowsItAsTextToo() {
    Sheets sheets =
        Sheets.of(
            Stream.of(
                SiteInput.text("<i>\"'&.yaml", Hostile.site()),
                SiteInput.text(
                    "<b>\u202E x: y.yaml", Hostile.site().replace("site: example\n", "")),
                SiteInput.text("<u>.yaml", "<script>: [")),
            Measure.METRIC,
            Paper.A4);
    Document index = Jsoup.parse(sheets.file("index.html"));
    assertThat(index.select("script, i, b, u")).isEmpty();
    assertThat(index.select("tbody th").text()).contains("<i>\"'&.yaml", "<u>.yaml:1:");
    assertThat(index.select("#sites a").eachAttr("href"))
        .containsExactly("b-x-y.html", "b-x-y-van.html", "example.html", "example-van.html");
    assertThat(sheets.files().keySet())
        .containsExactly(
            "example.html",
            "example-zones.csv",
            "example-certificate.html",
            "example-night-card.html",
            "example-yearly.html",
            "example-materials.html",
            "example-faults.html",
            "example-van.html",
            "example-visit.csv",
            "b-x-y.html",
            "b-x-y-zones.csv",
            "b-x-y-certificate.html",
            "b-x-y-night-card.html",
            "b-x-y-yearly.html",
            "b-x-y-materials.html",
            "b-x-y-faults.html",
            "b-x-y-van.html",
            "b-x-y-visit.csv",
            "index.html");
  }

  /** The papers and the cover, with a record that is hostile as well. */
  @Test
  void thePapersShowItAsTextToo() {
    String record =
        """
        customer: example-nurseries
        commissioning:
          date: 2026-03-14
          by: "<script>alert(1)</script>\\u202E"
          meter: {type: "<img src=x onerror=y>", serial-number: "\\u0007"}
          renewed: [{date: 2026-03-15, by: "<b>", reason: "<i>\\u2066"}]
        """;
    String site = Hostile.site().replace("stage: planned", "stage: commissioned") + record;
    String other = site.replace("site: example", "site: other");
    Sheets sheets = Papers.of(Papers.YEARLY, site, other);
    assertThat(sheets.files()).containsKeys("example-nurseries-cover.html", "due.ics");
    sheets
        .pages()
        .forEach(
            (name, page) -> {
              assertThat(page.select("script, img, i, iframe, object, embed, link, base, form"))
                  .as(name)
                  .isEmpty();
              assertThat(page.select("[style], [onmouseover], [onerror]")).as(name).isEmpty();
              assertThat(sheets.file(name).codePoints().boxed().toList())
                  .as(name)
                  .filteredOn(c -> c != '\n' && c != FIRST_STRONG_ISOLATE && c != POP_ISOLATE)
                  .noneMatch(
                      c -> Character.getType(c) == Character.FORMAT || Character.isISOControl(c));
            });
  }
}
