package org.headhouse.linter.report.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.materials.Slack;
import org.headhouse.linter.report.FileHistory;
import org.headhouse.linter.report.InventoryRow;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.report.SheetFile;
import org.headhouse.linter.report.SheetReport;
import org.headhouse.linter.report.SheetRequest;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/** A certificate of a file that has a history. */
class ProofHistoryTest {
  private static final String OLD =
      Papers.PROVED
          .replace("date: 2026-03-14", "date: 2025-02-03")
          .replace("by: Robin Oakfield", "by: Kit Marlowe")
          .replace("pair-resistance: 62 ohm\n", "pair-resistance: 61 ohm\n");

  private static FileHistory history(boolean whole, String... earlier) {
    List<FileHistory.Version> versions = new ArrayList<>();
    for (String text : earlier) {
      versions.add(new FileHistory.Version("c0ffee" + versions.size(), () -> text.getBytes(UTF_8)));
    }
    return new FileHistory(true, "abc1234", versions, whole);
  }

  private static Document certificate(String now, FileHistory history) {
    List<SheetFile> papers = new ArrayList<>();
    Papers.linter(Papers.YEARLY)
        .sheets(
            Stream.of(SiteInput.text("proved.yaml", now)),
            new SheetRequest(
                Measure.METRIC, Paper.A4, Slack.USUAL, (file, content) -> history, false),
            sheet -> papers.addAll(sheet.papers()));
    return Jsoup.parse(new String(papers.get(0).content(), UTF_8));
  }

  private static String heading(Document page) {
    return page.expectFirst("h1").text();
  }

  @Test
  void earlierProofsAreListedOnce() {
    Document page = certificate(Papers.PROVED, history(true, Papers.PROVED, OLD, OLD));
    assertThat(heading(page)).isEqualTo("Proved");
    assertThat(page.select("tbody").get(0).select("tr").eachText())
        .hasSize(2)
        .last()
        .isEqualTo(
            "3 February 2025 Kit Marlowe an earlier proof, in revision c0ffee1 61 ohms 0.31 volts");
    assertThat(page.text()).contains("abc1234").doesNotContain("history of the file");
  }

  /** The record is older than the change: nobody has seen the line as it is now. */
  @Test
  void aLineThatWasChangedAfterItsRecordIsNotProved() {
    String changed = Papers.PROVED.replaceFirst("stale-after: 40 s", "stale-after: 50 s");
    Document page = certificate(changed, history(true, changed, Papers.PROVED));
    assertThat(heading(page)).isEqualTo("Not proved");
    assertThat(page.select(".reasons li").eachText())
        .contains(
            "The line was changed after its record, and nobody proved the change.",
            "Nobody saw lost readings close the vents at Head House.");
    assertThat(page.select("tbody").get(1).select("tr").eachText())
        .startsWith(
            "Head House seen in an earlier state of the line only"
                + " seen in an earlier state of the line only",
            "House 2 seen to close, in 62 seconds seen to close");
  }

  /**
   * Whoever reads only the page over all sites, or the table of units, must not take it for proved.
   */
  @Test
  void theIndexAndTheInventorySayWhatTheCertificateSays() {
    String changed = Papers.PROVED.replaceFirst("stale-after: 40 s", "stale-after: 50 s");
    List<InventoryRow> units = new ArrayList<>();
    SheetReport report =
        Papers.linter(Papers.YEARLY)
            .sheets(
                Stream.of(
                    SiteInput.text("other.yaml", changed.replace("site: proved", "site: other")),
                    SiteInput.text("proved.yaml", Papers.PROVED)),
                new SheetRequest(
                    Measure.METRIC,
                    Paper.A4,
                    Slack.USUAL,
                    (file, content) -> history(true, Papers.PROVED),
                    false),
                sheet -> units.addAll(sheet.inventory()));
    Document index = Jsoup.parse(new String(report.html(), UTF_8));
    assertThat(index.select("#sites td.state").eachText())
        .containsExactly("commissioned, not proved", "commissioned");
    assertThat(index.select("#sites td.date").eachText()).containsExactly("now", "2027-03-14");
    assertThat(index.select("#due tbody td").eachText())
        .containsExactly("proved-nurseries", "now: it is not proved, as its certificate says");
    assertThat(units)
        .extracting(
            row -> String.join(" ", row.site(), row.provedOn(), row.provedBy(), row.nextProof()))
        .containsOnly("other   2026-11-25", "proved 2026-03-14 Robin Oakfield 2027-03-14");
  }

  @Test
  void whatWasProvedAgainAfterTheChangeIsProved() {
    String changed =
        Papers.PROVED.replaceFirst("stale-after: 40 s", "stale-after: 50 s")
            + "  renewed:\n    - {date: 2026-05-02, by: Robin Oakfield, reason: stale time set"
            + " anew, storm-response-seen: [Head House], stale-response-seen: [Head House]}\n";
    Document page = certificate(changed, history(true, Papers.PROVED));
    assertThat(heading(page)).isEqualTo("Proved");
    assertThat(page.select("tbody").get(0).text()).contains("proved again: stale time set anew");
  }

  /** The file is the same, but its types were others when the line was proved. */
  @Test
  void otherDeviceTypesAreAChangeOfTheLine() throws IOException {
    String types = Files.readString(Sheets.SAMPLE_TYPES);
    String landed = types.replace("positive-terminal: B", "positive-terminal: A");
    String titled = types.replace("title: ", "title: Old ");
    assertThat(landed).isNotEqualTo(types);
    assertThat(titled).isNotEqualTo(types);
    assertThat(heading(certificate(Papers.PROVED, with(landed)))).isEqualTo("Not proved");
    assertThat(heading(certificate(Papers.PROVED, with(titled)))).isEqualTo("Proved");
  }

  private static FileHistory with(String types) {
    return new FileHistory(
        true,
        "abc1234",
        List.of(
            new FileHistory.Version(
                "c0ffee", () -> Papers.PROVED.getBytes(UTF_8), () -> types.getBytes(UTF_8))),
        true);
  }

  /** What was changed before the whole line was proved anew is proved with it. */
  @Test
  void changesBeforeTheProofDoNotCount() {
    String before = OLD.replace("stale-after: 40 s", "stale-after: 20 s");
    assertThat(heading(certificate(Papers.PROVED, history(true, Papers.PROVED, before, OLD))))
        .isEqualTo("Proved");
  }

  @Test
  void aNewTitleTakesNothingAway() {
    String titled = Papers.PROVED.replace("Proved Nursery", "Other Nursery");
    assertThat(heading(certificate(titled, history(true, Papers.PROVED)))).isEqualTo("Proved");
  }

  @Test
  void whatIsMissingOfTheHistoryIsSaid() {
    assertThat(certificate(Papers.PROVED, history(false)).text())
        .contains("Only a part of the history of the file was at hand");
    assertThat(certificate(Papers.PROVED, FileHistory.UNKNOWN).text())
        .contains("The history of the file was not at hand");
    FileHistory broken =
        new FileHistory(
            true,
            "abc1234",
            List.of(
                new FileHistory.Version(
                    "c0ffee",
                    () -> {
                      throw new IOException("lost");
                    })),
            true);
    assertThat(certificate(Papers.PROVED, broken).text()).contains("Only a part of the history");
  }
}
