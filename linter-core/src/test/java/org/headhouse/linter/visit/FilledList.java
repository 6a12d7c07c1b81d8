package org.headhouse.linter.visit;

import static java.nio.charset.StandardCharsets.UTF_16BE;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import de.siegmar.fastcsv.writer.QuoteStrategies;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/**
 * A list of the goal report, filled in by chance as people do, and saved as spreadsheets do; with
 * what was really filled in, for a comparison.
 *
 * @param bytes of the file
 * @param facts each as day, person, what and value, of all that proves something
 * @param open what was not seen, each as the comment to expect
 * @param comments the text of each other comment to expect
 */
@SuppressWarnings("ArrayRecordComponent") // Given to a reader, and never compared.
record FilledList(byte[] bytes, Set<String> facts, Set<String> open, List<String> comments) {
  private static final List<String> FORMS =
      List.of(
          "uuuu-MM-dd",
          "d MMMM uuuu",
          "d-MMM-uuuu",
          "MMM d, uuuu",
          "dd.MM.uuuu",
          "d/M/uuuu",
          "uuuu-MM-dd HH:mm:ss");

  private static final List<String> PEOPLE = List.of("R.O.", "Kim Ash", "Ñ. \"Nu\" O'Dell, jr: on");

  /**
   * What a list is saved as.
   *
   * @param comma whether it precedes decimals
   */
  private record Dialect(
      char separator, boolean comma, boolean allQuoted, boolean stated, int coding) {
    static Dialect any(Random random) {
      char separator = ",;\t".charAt(random.nextInt(3));
      return new Dialect(
          separator,
          random.nextBoolean(),
          random.nextBoolean(),
          separator == ';' && random.nextBoolean(),
          random.nextInt(4));
    }
  }

  /** Who signs which rows. */
  private record Signature(LocalDate day, String by) {}

  /** Fills in a list. */
  static FilledList of(String csv, Random random) {
    Dialect dialect = Dialect.any(random);
    List<List<String>> rows = new ArrayList<>();
    for (CsvRecord row : CsvReader.builder().ofCsvRecord(csv)) {
      rows.add(new ArrayList<>(row.getFields()));
    }
    List<Signature> signatures = new ArrayList<>();
    for (int i = random.nextInt(3); i >= 0; i--) {
      signatures.add(
          new Signature(
              LocalDate.of(2026, 1 + random.nextInt(12), 1 + random.nextInt(28)),
              PEOPLE.get(random.nextInt(PEOPLE.size()))));
    }
    Set<String> facts = new TreeSet<>();
    Set<String> open = new TreeSet<>();
    List<String> comments = new ArrayList<>();
    for (List<String> row : rows.subList(2, rows.size())) {
      Signature signature = signatures.get(random.nextInt(signatures.size()));
      fill(row, signature, random, dialect, facts, open, comments);
    }
    List<List<String>> body = rows.subList(1, rows.size());
    if (random.nextBoolean()) {
      Collections.shuffle(body, random);
    }
    return new FilledList(bytes(rows, dialect, random), facts, open, comments);
  }

  private static void fill(
      List<String> row,
      Signature signature,
      Random random,
      Dialect dialect,
      Set<String> facts,
      Set<String> open,
      List<String> comments) {
    String what = row.get(0).replaceAll(" \\(.*", "");
    String unit = row.get(0).replaceAll(".*\\((.*)\\)", "$1");
    // A wind limit is entered together with the time: apart, it is a comment (tested elsewhere).
    boolean storm = what.startsWith("storm");
    if (random.nextInt(4) == 0) {
      row.set(3, random.nextBoolean() ? "" : "-");
      row.set(4, random.nextBoolean() ? signature.by() : "");
      return;
    }
    String remark = random.nextInt(4) == 0 ? "r" + random.nextInt(1_000_000) + " é, \"q\"; x" : "";
    row.set(6, remark.isEmpty() ? "" : remark.replace(" é", random.nextBoolean() ? "\né" : " é"));
    row.set(4, signature.by());
    row.set(5, date(signature.day(), random));
    String place = row.get(1).replaceFirst("^'(?==)", "");
    String value;
    if (unit.equals("yes") || (storm && what.endsWith("in") && random.nextInt(5) == 0)) {
      boolean no = random.nextInt(6) == 0;
      row.set(3, pick(random, no ? List.of("no", "N") : List.of("yes", "Y", "x", "ok", "✓")));
      value = no ? "no" : "yes";
    } else {
      value = measured(row, unit, random, dialect);
    }
    boolean isLimit = what.endsWith("limit");
    if (!remark.isEmpty() && !value.equals("no") && !isLimit) {
      comments.add(remark);
    }
    if (value.equals("no")) {
      String end = signature.by() + (remark.isEmpty() ? "" : "; " + remark);
      String day = signature.day().toString();
      open.add("look: " + what + ", " + place + ": not seen on " + day + " by " + end);
    } else {
      facts.add(fact(signature, what, place, value));
      if (isLimit && !remark.isEmpty()) {
        comments.add(remark);
      }
    }
  }

  static String fact(LocalDate day, String by, String what, String place, String value) {
    return String.join(" | ", day.toString(), by, what, place, value);
  }

  private static String fact(Signature signature, String what, String place, String value) {
    return fact(signature.day(), signature.by(), what, place, value);
  }

  private static String date(LocalDate day, Random random) {
    String form = pick(random, FORMS);
    boolean ambiguous = form.equals("d/M/uuuu") && day.getDayOfMonth() <= 12;
    String safe = ambiguous ? "uuuu-MM-dd" : form;
    return day.atStartOfDay().format(DateTimeFormatter.ofPattern(safe, Locale.ENGLISH));
  }

  /** Writes a value into the row. */
  private static String measured(List<String> row, String unit, Random random, Dialect dialect) {
    boolean volts = unit.equals("V");
    String number =
        volts
            ? (random.nextInt(8) == 0 ? "-" : "") + "0." + (100 + random.nextInt(800))
            : 1 + random.nextInt(140) + pick(random, List.of("", ".5", ".25"));
    String other =
        switch (unit) {
          case "ohm" -> pick(random, List.of("ohm", "Ω", "kohm"));
          case "V" -> pick(random, List.of("V", "mV", "volts"));
          case "s" -> pick(random, List.of("s", "sec", "min"));
          default -> pick(random, List.of("m/s", "km/h", "mph"));
        };
    boolean withUnit = random.nextBoolean();
    String shown = dialect.comma() ? number.replace('.', ',') : number;
    row.set(3, shown + (withUnit ? pick(random, List.of("", " ", "\u00A0")) + other : ""));
    return quantity(number + " " + (withUnit ? other : unit));
  }

  /** A quantity in one spelling: its number without zeros at the end, and the unit of a site. */
  static String quantity(String written) {
    String[] parts = written.split(" ", -1);
    String unit =
        switch (parts[1]) {
          case "Ω" -> "ohm";
          case "volts" -> "V";
          case "sec" -> "s";
          default -> parts[1];
        };
    return new BigDecimal(parts[0]).stripTrailingZeros().toPlainString() + " " + unit;
  }

  private static <T> T pick(Random random, List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  private static byte[] bytes(List<List<String>> rows, Dialect dialect, Random random) {
    StringWriter text = new StringWriter();
    var writer =
        CsvWriter.builder()
            .fieldSeparator(dialect.separator())
            .lineDelimiter(random.nextBoolean() ? LineDelimiter.CRLF : LineDelimiter.LF);
    if (dialect.allQuoted()) {
      writer.quoteStrategy(QuoteStrategies.ALWAYS);
    }
    if (dialect.stated()) {
      text.append("sep=").append(dialect.separator()).append("\r\n");
    }
    try (CsvWriter csv = writer.build(text)) {
      rows.forEach(csv::writeRecord);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return switch (dialect.coding()) {
      case 0 -> text.toString().getBytes(UTF_8);
      case 1 -> ("\uFEFF" + text).getBytes(UTF_8);
      case 2 -> ("\uFEFF" + text).getBytes(UTF_16LE);
      default -> ("\uFEFF" + text).getBytes(UTF_16BE);
    };
  }
}
