package org.headhouse.linter.fuzz;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.report.SheetReport;
import org.headhouse.linter.result.Level;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;

/** Whatever a site holds is text on its sheets, and nothing of it becomes part of the page. */
final class SheetsProperty implements Property {
  private final SiteLinter linter;

  SheetsProperty() throws IOException {
    this.linter = CheckProperty.linter(1);
  }

  @Override
  public void tryWith(byte[] input) {
    SheetReport report =
        linter.sheets(
            Stream.of(new SiteInput("alder-brook.yaml", most -> input)),
            Measure.METRIC,
            Paper.A4,
            sheet -> page(sheet.html()));
    page(report.html());
    Demand.that(
        report.notifications().stream().noneMatch(one -> one.level() == Level.ERROR),
        "trouble: %s",
        report.notifications());
  }

  private static void page(byte[] html) {
    Document page = Jsoup.parse(new String(html, UTF_8));
    Demand.that(
        page.select("script, img, iframe, object, embed, link, base, form").isEmpty(),
        "more than text: %s",
        page);
    Demand.that(page.select("head style").size() == 1, "not one style: %s", page.head());
  }
}
