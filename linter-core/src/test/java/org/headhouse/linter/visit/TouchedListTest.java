package org.headhouse.linter.visit;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.report.sheet.Sheets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A list in which somebody has entered something is known, whatever it was entered with. */
class TouchedListTest {
  private static final String HEADINGS = Visits.HEADINGS.strip();
  private static final String ROW = "outdoor readings seen (yes),Seedling North";

  private static String written() {
    return Sheets.of(
            Stream.of(SiteInput.text("elm-row.yaml", Visits.SITE)), Measure.METRIC, Paper.A4)
        .file("elm-row-visit.csv");
  }

  private static boolean mayBeFilled(String list) {
    return TouchedList.mayBe(list.getBytes(UTF_8));
  }

  @Test
  void aListAsItWasWrittenIsNot() {
    String list = written();
    assertThat(list).contains(HEADINGS + "\r\n", ROW + ",,,,,\r\n");
    assertThat(mayBeFilled(list)).isFalse();
    // A program for tables has opened and saved it.
    assertThat(mayBeFilled(list.replace("\r\n", "\n"))).isFalse();
    assertThat(mayBeFilled(list.replace("\r\n", ",,\r\n") + ",,,,,,,,\r\n")).isFalse();
    assertThat(mayBeFilled(list.replaceAll(",+\r\n", "\r\n"))).isFalse();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // In a column of one's own, with a heading or without; one saves rows of equal length.
        "remark,found today~ | ,,,,,~ | ,,,,,,yes~",
        "remark,~            | ,,,,,~ | ,,,,,,yes~",
        "remark~             | ,,,,,~ | ,,,,,,yes~",
        // A program that takes LF alone for the end of a line adds them after the CR.
        "remark^,found today@ | ,,,,,~ | ,,,,,^,yes@",
        "remark~             | ,,,,,~ | ,,,,,^,yes@",
        // Where the list asks for it, and in a row of one's own.
        "remark~             | ,,,,,~ | ,,yes,,,~",
        "remark~             | ,,,,,~ | ,,,,,frost~",
        "remark~             | ,,,,,~ | ,,,,,~display,Seedling North~"
      })
  void oneWithAnythingElseMayBe(String heading, String cells, String filled) {
    String changed =
        written()
            .replace("remark\r\n", line(heading))
            .replace(line(ROW + cells), line(ROW + filled));
    assertThat(changed).contains(line(ROW + filled));
    assertThat(mayBeFilled(changed)).isTrue();
  }

  private static String line(String text) {
    return text.replace("~", "\r\n").replace("^", "\r").replace("@", "\n");
  }
}
