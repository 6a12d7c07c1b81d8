package org.headhouse.linter.report.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.report.Paper;
import org.junit.jupiter.api.Test;

/** The list to fill in on a visit, as another reader of RFC 4180 has it. */
class VisitCsvTest {

  private static List<List<String>> rows(String site, Measure measure) {
    String csv =
        Sheets.of(Stream.of(SiteInput.text("example.yaml", site)), measure, Paper.A4)
            .file("example-visit.csv");
    // RFC 3629, section 6: the signature by which spreadsheets know UTF-8.
    assertThat(csv).startsWith("\uFEFFwhat,").endsWith("\r\n").doesNotContainPattern("[^\r]\n");
    List<List<String>> rows = new ArrayList<>();
    for (CsvRecord row : reader(csv)) {
      rows.add(row.getFields());
    }
    return rows;
  }

  /** Reads bytes, as a signature belongs to them and not to the text. */
  private static CsvReader<CsvRecord> reader(String csv) {
    return CsvReader.builder()
        .detectBomHeader(true)
        .ofCsvRecord(new ByteArrayInputStream(csv.getBytes(UTF_8)));
  }

  /** What the list of a site asks for, and where. */
  static List<String> asked(String site) {
    return asked(site, Measure.METRIC);
  }

  private static List<String> asked(String site, Measure measure) {
    return rows(site, measure).stream()
        .skip(1)
        .map(row -> row.get(0) + " @ " + row.get(1))
        .toList();
  }

  @Test
  void nothingIsFilledInBeforehand() {
    List<List<String>> rows = rows(Example.SITE, Measure.METRIC);
    assertThat(rows.get(0))
        .containsExactly("what", "where", "acceptable", "found", "by", "date", "remark");
    assertThat(rows).allSatisfy(row -> assertThat(row).hasSize(7));
    assertThat(rows.subList(1, rows.size()))
        .hasSize(1 + 2 + 3 * 3 + 4)
        .allSatisfy(row -> assertThat(row.subList(3, 7)).containsOnly(""));
  }

  /** The page docs/proof.md names what a record has to have, and where. */
  @Test
  void allThatARecordHasToProveHasARow() {
    String site = Example.with("termination: none\n", "termination: none\n    vents: none\n");
    assertThat(asked(site, Measure.METRIC))
        .containsExactly(
            "site @ example",
            "outdoor readings seen (yes) @ Seedling North",
            "outdoor readings seen (yes) @ Hardening Bay",
            "storm response: vents shut in (s) @ Propagation",
            "storm response: wind limit (m/s) @ Propagation",
            "vents shut without readings (yes) @ Propagation",
            "storm response: vents shut in (s) @ Hardening Bay",
            "storm response: wind limit (m/s) @ Hardening Bay",
            "vents shut without readings (yes) @ Hardening Bay",
            "pair resistance (ohm) @ Propagation",
            "idle voltage (V) @ Propagation",
            "pair resistance (ohm) @ Hardening Bay",
            "idle voltage (V) @ Hardening Bay");
    assertThat(asked(site, Measure.US)).contains("storm response: wind limit (mph) @ Propagation");
  }

  /** Two 120 ohm in parallel, with 100 m of cable between them, read about 62 ohm. */
  @Test
  void whatIsAcceptableIsThere() {
    List<String> ranges =
        rows(Example.SITE, Measure.METRIC).stream()
            .filter(row -> row.get(0).startsWith("pair"))
            .map(row -> row.get(2))
            .toList();
    assertThat(ranges)
        .hasSize(2)
        .allSatisfy(
            range -> {
              String[] limits = range.replace(" ohm", "").split(" to ", -1);
              assertThat(Double.parseDouble(limits[0])).isBetween(50.0, 61.0);
              assertThat(Double.parseDouble(limits[1])).isBetween(63.0, 75.0);
            });
  }

  @Test
  void theTimeOfTheFileIsTheOneToKeep() {
    String site =
        Example.with(
            "termination: none\n", "termination: none\n    vents: roof\n    close-time: 90 s\n");
    assertThat(rows(site, Measure.METRIC))
        .contains(
            List.of(
                "storm response: vents shut in (s)",
                "Seedling North",
                "at most 90 s",
                "",
                "",
                "",
                ""));
  }

  @Test
  void namesAreNoFormulas() {
    assertThat(rows(Example.with("Hardening Bay", "\"=1+2\""), Measure.METRIC))
        .allSatisfy(row -> assertThat(row.get(1)).doesNotStartWith("="))
        .anySatisfy(row -> assertThat(row.get(1)).isEqualTo("'=1+2"));
  }
}
