package org.headhouse.linter.visit;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.draft.SiteUpdate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The page on visits says what becomes of a list. */
class VisitPageTest {
  private static final Path PAGE = Path.of("docs", "visit.md");

  private static String block(Path page, String mark) throws IOException {
    Matcher matcher =
        Pattern.compile("<!-- " + mark + " -->\n```[a-z]+\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(page));
    assertThat(matcher.find()).as("the block %s", mark).isTrue();
    return matcher.group(1);
  }

  @Test
  void theListBecomesTheRecord() throws IOException {
    String site = block(Path.of("docs", "proof.md"), "example: site");
    SiteUpdate.Made made =
        Visits.made(block(PAGE, "example: list").getBytes(UTF_8), site.getBytes(UTF_8));
    assertThat(new String(made.after(), UTF_8)).isEqualTo(site + block(PAGE, "output: record"));
    assertThat(made.remarks().stream().map(one -> one.level().word() + ": " + one.text()))
        .containsExactly(block(PAGE, "output: remarks").strip().split("\n", -1));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "date | pair resistance (ohm)",
        "seen | outdoor readings seen (yes)",
        "resistance | pair resistance (ohm)",
        "voltage | idle voltage (V)",
        "time | storm response: vents shut in (s)",
        "wind | storm response: wind limit (m/s)"
      })
  void theCellsAreReadAsThePageSays(String kind, String what) throws IOException {
    Matcher row =
        Pattern.compile("(?m)^\\| " + kind + " \\| (.*?) \\| (.*?) \\|$")
            .matcher(Files.readString(PAGE));
    assertThat(row.find()).isTrue();
    assertThat(cells(row.group(1)))
        .hasSizeGreaterThan(3)
        .allSatisfy(
            cell -> assertThat(update(kind, what, cell)).isInstanceOf(SiteUpdate.Made.class));
    assertThat(cells(row.group(2)))
        .hasSizeGreaterThan(1)
        .allSatisfy(
            cell -> assertThat(update(kind, what, cell)).isInstanceOf(SiteUpdate.Refused.class));
  }

  private static List<String> cells(String text) {
    return Pattern.compile("`(.*?)`").matcher(text).results().map(VisitPageTest::cell).toList();
  }

  private static String cell(MatchResult match) {
    return match.group(1);
  }

  private static SiteUpdate update(String kind, String what, String cell) {
    String found = kind.equals("date") ? "62" : cell;
    String date = kind.equals("date") ? cell : "2026-03-14";
    String list =
        (Visits.HEADINGS + Visits.OF_SITE).replace(',', '\t')
            + String.join("\t", what, "Seedling North", "", found, "R.O.", date, "");
    return Visits.update(list.getBytes(UTF_8), Visits.SITE.getBytes(UTF_8));
  }
}
