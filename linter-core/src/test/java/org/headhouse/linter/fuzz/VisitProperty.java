package org.headhouse.linter.fuzz;

import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.draft.ListFault;
import org.headhouse.linter.draft.SiteUpdate;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.visit.Visits;

/**
 * A list from a visit is refused with faults that lie in it, or adds one piece to the site and
 * changes nothing else. Whoever signed that piece, its day, and each item in it are in cells of
 * rows in which something was found, as another reader of such lists has them.
 */
final class VisitProperty implements Property {
  private static final String FILE = "visit.csv";
  private static final List<String> NAMES =
      List.of("Propagation", "Seedling North", "East Boiler Room", "Hardening Bay");
  private static final Pattern SIGNED = Pattern.compile("(?m)\\bby: *(.+)$");
  private static final Pattern DAY = Pattern.compile("\\bdate: (\\d{4}-\\d\\d-\\d\\d)");

  private final SiteLinter linter;

  VisitProperty() throws IOException {
    this.linter = CheckProperty.linter(1);
  }

  @Override
  public void tryWith(byte[] input) throws IOException {
    SiteUpdate update =
        linter.visit(
            new SiteInput(FILE, most -> input), SiteInput.text("elm-row.yaml", Visits.SITE));
    String list = text(input);
    if (update instanceof SiteUpdate.Refused refused) {
      Told told = new Told(FILE, list.getBytes(UTF_8));
      for (ListFault fault : refused.faults()) {
        told.location(fault.location());
        Told.message(fault.message());
        Told.printable(TextReport.lines(fault.location(), fault.message()));
      }
    } else {
      SiteUpdate.Made made = (SiteUpdate.Made) update;
      Told.printable(made.remarks().stream().map(SiteUpdate.Remark::text).toList());
      added(new String(made.after(), UTF_8), list);
    }
  }

  private static String text(byte[] input) {
    boolean wide =
        input.length > 1
            && ((input[0] == (byte) 0xFE && input[1] == (byte) 0xFF)
                || (input[0] == (byte) 0xFF && input[1] == (byte) 0xFE));
    String text = new String(input, wide ? UTF_16 : UTF_8);
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  private static void added(String after, String list) {
    String before = Visits.SITE;
    int same = 0;
    while (same < before.length()
        && same < after.length()
        && before.charAt(same) == after.charAt(same)) {
      same++;
    }
    String rest = before.substring(same);
    int end = after.length() - rest.length();
    Demand.that(end >= same && after.endsWith(rest), "more than one piece is changed: %s", after);
    String piece = after.substring(same, end).replaceAll("(?m)^ *#.*$", "");
    Demand.that(
        piece.isBlank()
            || Stream.of(',', ';', '\t')
                .anyMatch(one -> isSaid(piece, OtherCsvReader.rows(list, one))),
        "%s is not in the cells of %s",
        piece,
        list);
  }

  private static boolean isSaid(String piece, List<List<String>> rows) {
    List<List<String>> found = found(rows);
    Matcher signed = SIGNED.matcher(piece);
    while (signed.find()) {
      if (!isIn(letters(signed.group(1)), found)) {
        return false;
      }
    }
    Matcher day = DAY.matcher(piece);
    while (day.find()) {
      if (found.stream().flatMap(List::stream).noneMatch(cell -> isDay(cell, day.group(1)))) {
        return false;
      }
    }
    return !found.isEmpty()
        && new RecordedFinds(NAMES.get(0), columns(rows, "what", "where", "found"))
            .unsaid(piece)
            .isEmpty()
        && NAMES.stream()
            .filter(name -> letters(piece).contains(letters(name)))
            .allMatch(name -> isIn(letters(name), found));
  }

  /** Whether a cell has a day, the month as a number or as a word. */
  private static boolean isDay(String cell, String written) {
    LocalDate day = LocalDate.parse(written);
    String month = day.getMonth().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    return cell.contains(written.substring(2, 4))
        && cell.contains(String.valueOf(day.getDayOfMonth()))
        && (cell.contains(String.valueOf(day.getMonthValue()))
            || letters(cell).contains(letters(month)));
  }

  private static boolean isIn(String letters, List<List<String>> rows) {
    return rows.stream().flatMap(List::stream).anyMatch(cell -> letters(cell).contains(letters));
  }

  private static String letters(String text) {
    return text.replaceAll("[^\\p{L}\\p{N}]", "").toLowerCase(Locale.ROOT);
  }

  /** The rows in which something was found. */
  private static List<List<String>> found(List<List<String>> rows) {
    for (List<String> heading : rows) {
      int column = heading.stream().map(VisitProperty::letters).toList().indexOf("found");
      if (column >= 0) {
        return rows.subList(rows.indexOf(heading) + 1, rows.size()).stream()
            .filter(row -> row.size() > column && !row.get(column).isBlank())
            .toList();
      }
    }
    return List.of();
  }

  /** The cells of rows with something found, under some headings. */
  private static List<List<String>> columns(List<List<String>> rows, String... headings) {
    for (List<String> row : rows) {
      List<String> names = row.stream().map(VisitProperty::letters).toList();
      List<Integer> places = Stream.of(headings).map(names::indexOf).toList();
      if (!places.contains(-1)) {
        return found(rows).stream()
            .map(one -> places.stream().map(at -> at < one.size() ? one.get(at) : "").toList())
            .toList();
      }
    }
    return List.of();
  }
}
