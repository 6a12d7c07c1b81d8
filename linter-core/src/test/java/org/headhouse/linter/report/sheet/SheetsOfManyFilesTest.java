package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.result.Notification;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;

/** Many files: none overwrites another's page, and none is lost from the index. */
class SheetsOfManyFilesTest {
  private static final SiteInput UNREADABLE =
      new SiteInput(
          "gone.yaml",
          most -> {
            throw new IOException("the disk is gone");
          });

  private static Stream<SiteInput> inputs() {
    String withoutId = Example.SITE.replace("site: example\n", "");
    return Stream.of(
        SiteInput.text("a/example.yaml", Example.SITE),
        SiteInput.text("b/example.yaml", Example.SITE),
        SiteInput.text(
            "c/example-2.yaml", Example.SITE.replace("site: example", "site: example-2")),
        SiteInput.text("d/index.yaml", Example.SITE.replace("site: example", "site: index")),
        SiteInput.text("e/Plan 1.yaml", withoutId),
        SiteInput.text("e/plan_1.yaml", withoutId),
        SiteInput.text("e/Plan-1.yml", withoutId),
        SiteInput.text("f/torn.yaml", "format: ["),
        UNREADABLE);
  }

  private static Sheets sheets(int threads) {
    return Sheets.of(Sheets.linter(threads), inputs(), Measure.METRIC, Paper.A4);
  }

  @Test
  void everySiteHasAPageOfItsOwn() {
    assertThat(
            sheets(1).files().keySet().stream()
                .filter(
                    name ->
                        name.matches(
                            ".*(?<!-certificate|-night-card|-yearly|-materials|-faults|-van)\\.html")))
        .containsExactly(
            "example.html",
            "example-2.html",
            "example-2-2.html",
            "index-2.html",
            "e-Plan-1.html",
            "e-plan_1.html",
            "e-Plan-1-2.html",
            "index.html");
  }

  @Test
  void thePageOfTheSecondTellsOfTheFirst() {
    Sheets sheets = sheets(1);
    String rule = "site.duplicate-id";
    assertThat(Jsoup.parse(sheets.file("example.html")).select(".rule small").eachText())
        .doesNotContain(rule);
    Document second = Jsoup.parse(sheets.file("example-2.html"));
    assertThat(second.select(".rule small").eachText()).contains(rule);
    assertThat(second.select("#hand-over a").attr("href")).isEqualTo("example-2-zones.csv");
  }

  @Test
  void theIndexHasARowForEachFile() {
    Document index = Jsoup.parse(sheets(1).file("index.html"));
    Elements rows = index.select("#sites tbody tr:not(.group)");
    assertThat(rows).hasSize(9);
    assertThat(index.select("#sites td.state").eachText())
        .containsExactly(
            "not readable",
            "not readable",
            "planned",
            "planned",
            "planned",
            "planned",
            "planned",
            "planned",
            "planned");
    assertThat(rows.get(0).text()).contains("f/torn.yaml:1:10: error:");
    assertThat(rows.get(1).text()).contains("the disk is gone");
    assertThat(index.select("header p").text()).startsWith("9 sites, 6 with errors or unreadable");
  }

  @Test
  void theyAreTheSameWhateverTheNumberOfThreads() {
    Sheets one = sheets(1);
    Sheets three = sheets(3);
    assertThat(three.files()).isEqualTo(one.files());
    assertThat(three.notifications()).isEqualTo(one.notifications());
    assertThat(one.notifications().stream().map(Notification::text))
        .isEqualTo(
            List.of(
                "it has no figures and no sheets: the index says why",
                "the file cannot be read: the disk is gone"));
  }
}
