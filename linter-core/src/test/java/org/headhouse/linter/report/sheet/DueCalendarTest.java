package org.headhouse.linter.report.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.ParseWarning;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.report.Paper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The calendar of proofs that are due, read by another library; RFC 5545. */
class DueCalendarTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
  private static final LocalDate DAY = LocalDate.of(2027, 3, 14);

  private static byte[] calendar(String... titles) {
    List<DueEntry> entries = new ArrayList<>();
    for (String title : titles) {
      entries.add(
          new DueEntry("uid-" + entries.size(), title, DAY, TODAY, true, "a, b; c-yearly.html"));
    }
    return DueCalendar.of(entries, TODAY);
  }

  private static ICalendar read(byte[] bytes) {
    List<List<ParseWarning>> warnings = new ArrayList<>();
    List<ICalendar> all = Biweekly.parse(new String(bytes, UTF_8)).warnings(warnings).all();
    assertThat(warnings).containsExactly(List.of());
    assertThat(all).hasSize(1);
    assertThat(all.get(0).validate(ICalVersion.V2_0).isEmpty())
        .as(all.get(0).validate(ICalVersion.V2_0).toString())
        .isTrue();
    return all.get(0);
  }

  /** RFC 5545, 3.3.11: what has a meaning in a text is escaped; 3.1: lines are folded. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Alder Brook Plant Nursery",
        "Commas, semicolons; back\\slashes \\n and : colons",
        "Gärtnerei am Mühlbach, Gewächshäuser für Geranien, Primeln und Stiefmütterchen",
        "苗圃苗圃苗圃苗圃苗圃苗圃苗圃苗圃苗圃苗圃苗圃苗圃苗圃苗圃苗圃苗圃苗圃苗圃苗圃苗圃",
        "🌱🌱🌱🌱🌱🌱🌱🌱🌱🌱🌱🌱🌱🌱🌱🌱🌱🌱🌱🌱🌱🌱🌱🌱🌱🌱🌱"
      })
  void anotherReaderGetsWhatWasWritten(String title) {
    byte[] bytes = calendar(title);
    VEvent event = read(bytes).getEvents().get(0);
    assertThat(event.getSummary().getValue()).isEqualTo("Prove the line again: " + title);
    assertThat(event.getDescription().getValue())
        .isEqualTo(
            "Last record: 25 November 2026.\nTake the yearly sheet along: a, b; c-yearly.html");
    assertThat(event.getDateStart().getValue().hasTime()).isFalse();
    assertThat(
            event
                .getDateStart()
                .getValue()
                .toInstant()
                .atZone(ZoneId.systemDefault())
                .toLocalDate())
        .isEqualTo(DAY);
    assertThat(event.getAlarms()).isEmpty();
    assertThat(event.getUid().getValue()).isEqualTo("uid-0");
  }

  /** RFC 5545, 3.1: lines end with CR LF, and have at most 75 octets before that. */
  @Test
  void linesAreShortAndEndAsTheyHaveTo() {
    byte[] bytes =
        calendar(
            "苗圃".repeat(50), "🌱".repeat(60), "a".repeat(200), "ä".repeat(31), "é,".repeat(60));
    String text = new String(bytes, UTF_8);
    assertThat(text).endsWith("END:VCALENDAR\r\n").doesNotContain("\uFFFD");
    assertThat(text.replace("\r\n", "")).doesNotContain("\r", "\n");
    for (String line : text.split("\r\n", -1)) {
      assertThat(line.getBytes(UTF_8)).hasSizeLessThanOrEqualTo(75);
    }
    assertThat(read(bytes).getEvents()).hasSize(5);
  }

  @Test
  void thereIsOneEntryForEachLineThatIsProved() {
    String planned =
        Papers.PROVED
            .replace("site: proved", "site: planned")
            .replace("stage: commissioned", "stage: planned");
    String later =
        Papers.PROVED.replace("site: proved", "site: later").replace("2026-03-14", "2026-05-31");
    Sheets sheets = named(Papers.PROVED, planned, later);
    ICalendar calendar = read(sheets.file("due.ics").getBytes(UTF_8));
    assertThat(calendar.getEvents())
        .extracting(
            event ->
                event
                    .getDateStart()
                    .getValue()
                    .toInstant()
                    .atZone(ZoneId.systemDefault())
                    .toLocalDate())
        .containsExactly(LocalDate.of(2027, 3, 14), LocalDate.of(2027, 5, 31));
    assertThat(calendar.getEvents())
        .extracting(event -> event.getUid().getValue())
        .doesNotHaveDuplicates();
    assertThat(sheets.file("due.ics"))
        .isEqualTo(named(Papers.PROVED, planned, later).file("due.ics"));
  }

  /** Each in a file of its name: another one is an error, and the line is not proved. */
  private static Sheets named(String proved, String planned, String later) {
    return Sheets.of(
        Papers.linter(Papers.YEARLY),
        Stream.of(
            SiteInput.text("sites/proved.yaml", proved),
            SiteInput.text("sites/planned.yaml", planned),
            SiteInput.text("sites/later.yaml", later)),
        Measure.METRIC,
        Paper.A4);
  }

  /** A line that nobody proved is due now, and not a year after its record. */
  @Test
  void aLineThatIsNotProvedIsDueToday() {
    String unsigned = Papers.PROVED.replace("by: Robin Oakfield", "by: tbd");
    VEvent event =
        read(Papers.of(Papers.YEARLY, unsigned).file("due.ics").getBytes(UTF_8)).getEvents().get(0);
    assertThat(event.getDescription().getValue())
        .contains("Not proved when this was made: see its certificate.");
    assertThat(
            event
                .getDateStart()
                .getValue()
                .toInstant()
                .atZone(ZoneId.systemDefault())
                .toLocalDate())
        .isEqualTo(LocalDate.of(2026, 11, 25));
    assertThat(Papers.paper("-yearly", Papers.YEARLY, unsigned).text())
        .contains("Due now: it is not proved, as its certificate says")
        .doesNotContain("14 March 2027");
    assertThat(Papers.paper("-yearly", Papers.YEARLY, Papers.PROVED).text())
        .contains("Due 14 March 2027");
  }

  @Test
  void withoutAPeriodThereIsNoCalendar() {
    assertThat(Papers.of("format: 1\nrule-set: 1\n", Papers.PROVED).files())
        .doesNotContainKey("due.ics");
  }
}
