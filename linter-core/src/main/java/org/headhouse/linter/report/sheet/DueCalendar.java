package org.headhouse.linter.report.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;

/**
 * The days on which lines are to be proved again, as RFC 5545 has it: one entry of a whole day for
 * each, without an alarm. Lines are folded at 75 octets, and a character is never divided; the
 * libraries that were looked at fold at 75 characters.
 */
public final class DueCalendar {
  /** The name of the file. */
  public static final String FILE = "due.ics";

  /** The octets of a line without its end (RFC 5545, 3.1). */
  private static final int LONGEST_LINE = 75;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  private DueCalendar() {}

  /**
   * The whole file. A calendar has at least one entry (RFC 5545, 3.6).
   *
   * @param today the day on which it is made
   */
  public static byte[] of(List<DueEntry> entries, LocalDate today) {
    if (entries.isEmpty()) {
      throw new IllegalArgumentException("a calendar without an entry");
    }
    DueCalendar calendar = new DueCalendar();
    calendar.line("BEGIN", "VCALENDAR");
    calendar.line("VERSION", "2.0");
    calendar.line("PRODID", "-//headhouse.org//Greenhouse line linter//EN");
    entries.forEach(entry -> calendar.event(entry, today));
    calendar.line("END", "VCALENDAR");
    return calendar.out.toByteArray();
  }

  private void event(DueEntry entry, LocalDate today) {
    LocalDate recorded = entry.recorded();
    line("BEGIN", "VEVENT");
    line("UID", entry.uid());
    line("DTSTAMP", date(today) + "T000000Z");
    line("DTSTART;VALUE=DATE", date(entry.day()));
    line("SUMMARY", escaped("Prove the line again: " + entry.title()));
    line(
        "DESCRIPTION",
        escaped(
            (recorded == null ? "" : "Last record: " + SpokenText.day(recorded) + ".\n")
                + (entry.isProved() ? "" : "Not proved when this was made: see its certificate.\n")
                + "Take the yearly sheet along: "
                + entry.sheet()));
    line("TRANSP", "TRANSPARENT");
    line("END", "VEVENT");
  }

  private static String date(LocalDate day) {
    return DateTimeFormatter.BASIC_ISO_DATE.format(day);
  }

  /** As a value of text (RFC 5545, 3.3.11), which has no control character but a line end. */
  private static String escaped(String text) {
    StringBuilder escaped = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '\\', ';', ',' -> escaped.append('\\').appendCodePoint(c);
                case '\n' -> escaped.append("\\n");
                default -> escaped.appendCodePoint(Character.isISOControl(c) ? ' ' : c);
              }
            });
    return escaped.toString();
  }

  private void line(String name, String value) {
    String line = name + ":" + value;
    int octets = 0;
    for (int i = 0; i < line.length(); ) {
      int c = line.codePointAt(i);
      byte[] character = Character.toString(c).getBytes(UTF_8);
      if (octets + character.length > LONGEST_LINE) {
        out.writeBytes("\r\n ".getBytes(UTF_8));
        octets = 1;
      }
      out.writeBytes(character);
      octets += character.length;
      i += Character.charCount(c);
    }
    out.writeBytes("\r\n".getBytes(UTF_8));
  }
}
