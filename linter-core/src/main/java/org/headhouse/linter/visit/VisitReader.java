package org.headhouse.linter.visit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.draft.Cell;
import org.headhouse.linter.draft.CsvReader;
import org.headhouse.linter.draft.DecimalSigns;
import org.headhouse.linter.draft.Faults;
import org.headhouse.linter.proof.VisitEntry;
import org.headhouse.linter.site.Format;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.InvisibleCharacters;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.jspecify.annotations.Nullable;

/** Reads a list from a visit to one site; what is not understood is a fault, and never a guess. */
final class VisitReader {
  private static final Pattern WHAT = Pattern.compile("(.+?)\\s*(?:[(\\[]([^()\\[\\]]*)[)\\]])?");

  /**
   * No words of a row are as long; a search in longer ones takes a time that grows with its square.
   */
  private static final int LONGEST_WHAT = 200;

  private final VisitColumns columns;
  private final VisitPlaces places;
  private final FoundCell founds;
  private final DateCell dates;
  private final Faults faults;
  private final Map<List<String>, List<String>> said = new HashMap<>();

  /** What a row asks for, and the unit that it asks for it in; empty for none. */
  private record Asked(VisitEntry entry, String unit) {}

  private VisitReader(VisitColumns columns, Site site, DecimalSigns signs, Faults faults) {
    this.columns = columns;
    this.places = new VisitPlaces(site, faults);
    this.founds = new FoundCell(signs, faults);
    this.dates = new DateCell(faults);
    this.faults = faults;
  }

  /**
   * The site that a list is of, as the list calls it; null where it says none, or cannot be read,
   * which is reported.
   */
  static @Nullable String site(SourceText source, Faults faults) {
    List<List<Cell>> rows = CsvReader.read(source, faults).rows();
    VisitColumns columns =
        rows.isEmpty() || !faults.isEmpty() ? null : VisitColumns.of(rows.get(0), faults);
    if (columns == null) {
      return null;
    }
    return rows.stream()
        .filter(row -> isSite(asked(columns.cell(row, "what"))))
        .map(row -> columns.cell(row, "where").text())
        .findFirst()
        .orElse(null);
  }

  /** The list; whole only where no fault is reported. */
  static VisitList read(SourceText source, Site site, Faults faults) {
    CsvReader.Table table = CsvReader.read(source, faults);
    if (table.rows().isEmpty()) {
      if (faults.isEmpty()) {
        reportNoSite(Region.START_OF_FILE, faults);
      }
      return VisitList.NONE;
    }
    List<List<Cell>> rows = table.rows();
    VisitColumns columns = VisitColumns.of(rows.get(0), faults);
    if (columns == null) {
      return VisitList.NONE;
    }
    List<List<Cell>> filled = rows.subList(1, rows.size());
    List<Cell> numbers = filled.stream().map(row -> columns.cell(row, "found")).toList();
    DecimalSigns signs = DecimalSigns.of(numbers, table.separator());
    return new VisitReader(columns, site, signs, faults).list(filled, site);
  }

  private static void reportNoSite(Region region, Faults faults) {
    faults.add(
        region,
        "no row says which site the list is of",
        "what was found at one site proves nothing of another",
        "keep the row \"site\" as the goal report wrote it");
  }

  private VisitList list(List<List<Cell>> table, Site site) {
    String called = site.id().or(site.source().path());
    if (reportsOtherSite(table, called)) {
      return VisitList.NONE;
    }
    List<VisitRow> rows = new ArrayList<>();
    String reason = "";
    boolean hasSite = false;
    int blank = 0;
    for (List<Cell> row : table) {
      Asked what = asked(columns.cell(row, "what"));
      if (columns.reportsDivided(row, faults)) {
        hasSite |= isSite(what);
      } else if (what == null) {
        reportUnknown(columns.cell(row, "what"), row);
      } else if (isSite(what)) {
        hasSite = true;
        String remark = ofSite(row);
        reason = reason.isEmpty() ? remark : reason;
      } else if (isFirst(what, row)) {
        VisitRow read = row(what, row);
        if (read == null) {
          blank++;
        } else {
          rows.add(read);
        }
      }
    }
    if (!hasSite && faults.isEmpty()) {
      reportNoSite(Region.START_OF_FILE, faults);
    }
    return new VisitList(called, reason, rows, blank, columns.unread());
  }

  private static @Nullable Asked asked(Cell cell) {
    if (cell.text().length() > LONGEST_WHAT) {
      return null;
    }
    Matcher matcher = WHAT.matcher(cell.text());
    if (!matcher.matches()) {
      return null;
    }
    String words = matcher.group(1).toLowerCase(Locale.ROOT);
    for (VisitEntry entry : VisitEntry.values()) {
      if (entry.words().equals(words)) {
        return new Asked(entry, matcher.group(2) == null ? "" : matcher.group(2).strip());
      }
    }
    return null;
  }

  /** Whether a row is about something that a list asks for. */
  static boolean isUnderstood(Cell what) {
    return asked(what) != null;
  }

  private static boolean isSite(@Nullable Asked what) {
    return what != null && what.entry() == VisitEntry.SITE;
  }

  private void reportUnknown(Cell what, List<Cell> row) {
    faults.add(
        what.isEmpty() ? row.get(0) : what,
        what.isEmpty() ? "the row does not say what it is about" : what.shown() + " is not known",
        "what it says would be left out",
        "keep the column \"what\" as the goal report wrote it, or delete the row");
  }

  /** Rows of another site are reported alone: what its other rows name is not here either. */
  private boolean reportsOtherSite(List<List<Cell>> table, String called) {
    boolean isOther = false;
    for (List<Cell> row : table) {
      Cell where = columns.cell(row, "where");
      if (isSite(asked(columns.cell(row, "what")))
          && !VisitPlaces.plain(called).equals(VisitPlaces.plain(where.text()))) {
        isOther = true;
        faults.add(
            where,
            "the list is of the site " + where.shown() + ", and not of \"" + called + "\"",
            "what was found at one site proves nothing of another",
            "name the file of that site, or take the list of this one");
      }
    }
    return isOther;
  }

  /** What the row of the site remarks; anything found in it is reported. */
  private String ofSite(List<Cell> row) {
    Cell found = columns.cell(row, "found");
    if (!FoundCell.isBlank(found)) {
      faults.add(
          found,
          "the row of the site has " + found.shown() + " as what was found",
          "it is not about anything that can be seen or measured",
          "empty the cell, or move it into the row that it belongs to");
    }
    return remark(columns.cell(row, "remark"));
  }

  /** Whether no row before asks for the same; one that says something else is reported. */
  private boolean isFirst(Asked what, List<Cell> row) {
    Cell where = columns.cell(row, "where");
    List<String> key = List.of(what.entry().name(), where.text());
    List<String> says =
        List.of("found", "by", "date", "remark").stream()
            .map(heading -> columns.cell(row, heading).text())
            .toList();
    List<String> before = said.putIfAbsent(key, says);
    if (before != null && !before.equals(says)) {
      faults.add(
          where,
          "the list has " + what.entry().words() + " at " + where.shown() + " twice",
          "the two rows say different things",
          "delete the one that is wrong; a second visit gets a list of its own");
    }
    return before == null;
  }

  /** What a row says; null where it says nothing, or is not understood, which is reported. */
  private @Nullable VisitRow row(Asked what, List<Cell> row) {
    Cell found = columns.cell(row, "found");
    Cell remark = columns.cell(row, "remark");
    boolean blank = FoundCell.isBlank(found);
    if (blank && remark(remark).isEmpty()) {
      return null;
    }
    VisitPlaces.Place place = places.read(what.entry(), columns.cell(row, "where"));
    Found value = founds.read(what.entry(), found, columns.cell(row, "acceptable"), what.unit());
    Cell by = columns.cell(row, "by");
    Cell date = columns.cell(row, "date");
    boolean isSigned = !blank || !by.saysNothing() || !date.saysNothing();
    VisitRow.Signed signature = isSigned ? signature(by, date) : null;
    if (place == null
        || (!blank && value == Found.Nothing.NOTHING)
        || (isSigned && signature == null)
        || SeenResponse.reportsOther(what.entry(), value, place.item(), found, faults)) {
      return null;
    }
    return new VisitRow(
        what.entry(),
        place.item(),
        place.side(),
        value,
        signature,
        remark(remark),
        blank ? remark : found);
  }

  private VisitRow.@Nullable Signed signature(Cell by, Cell date) {
    boolean hasName = isName(by);
    LocalDate day = null;
    if (date.saysNothing()) {
      faults.add(
          date,
          "the row has no date",
          "a record says on which day it was proved",
          "fill in by and date in each row with something found, also where all are the same");
    } else if (!FoundCell.reportsFormula(date, faults)) {
      day = dates.read(date);
    }
    return hasName && day != null ? new VisitRow.Signed(day, by.text()) : null;
  }

  private boolean isName(Cell by) {
    if (by.saysNothing()) {
      faults.add(
          by,
          "nobody signed the row",
          "a proof that nobody signed is no proof",
          "fill in by and date in each row with something found, also where all are the same");
      return false;
    }
    if (FoundCell.reportsFormula(by, faults)) {
      return false;
    }
    String name = by.text();
    boolean hidden = name.codePoints().anyMatch(c -> !InvisibleCharacters.isWritten(c));
    if (hidden || name.codePointCount(0, name.length()) > Format.LONGEST_TEXT) {
      faults.add(
          by,
          "the name " + by.shown() + (hidden ? " has hidden characters" : " is too long"),
          "people have to find who signed by it",
          "write the name in one line of at most " + Format.LONGEST_TEXT + " characters");
      return false;
    }
    return true;
  }

  /** One line in which nothing is hidden; empty for none. */
  private static String remark(Cell cell) {
    return cell.saysNothing() ? "" : inOneLine(cell.text());
  }

  /** A text without line breaks and hidden characters. */
  static String inOneLine(String text) {
    StringBuilder line = new StringBuilder();
    text.codePoints()
        .map(c -> isSpace(c) || InvisibleCharacters.visible(c) != c ? ' ' : c)
        .forEach(line::appendCodePoint);
    return line.toString().strip().replaceAll(" {2,}", " ");
  }

  private static boolean isSpace(int c) {
    return Character.isWhitespace(c) || Character.isSpaceChar(c);
  }
}
