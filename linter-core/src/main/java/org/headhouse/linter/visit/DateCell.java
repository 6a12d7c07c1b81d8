package org.headhouse.linter.visit;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.draft.Cell;
import org.headhouse.linter.draft.Faults;
import org.jspecify.annotations.Nullable;

/**
 * Reads the day of a visit. A written month, a year in front, or points between leave no doubt;
 * with slashes or hyphens some write the day first and others the month, so that one of the two has
 * to be above 12, or both the same.
 */
final class DateCell {
  /** A spreadsheet that keeps a day as a moment shows the start of the day, or the hour. */
  private static final String HOUR = "(?:[T ] ?[0-9]{1,2}:[0-9]{2}(?::[0-9]{2}(?:\\.0*)?)?)?";

  private static final Pattern YEAR_FIRST =
      Pattern.compile("([0-9]{4})([-/.])([0-9]{1,2})\\2([0-9]{1,2})" + HOUR);
  private static final Pattern YEAR_LAST =
      Pattern.compile("([0-9]{1,2})([-/.]) ?([0-9]{1,2})\\2 ?([0-9]{4})" + HOUR);
  private static final Pattern DAY_AND_MONTH =
      Pattern.compile(
          "([0-9]{1,2})(?:st|nd|rd|th|\\.)?[ -]?(\\p{L}+)\\.?,?[ -]?([0-9]{4}|[0-9]{2})",
          Pattern.CASE_INSENSITIVE);
  private static final Pattern MONTH_AND_DAY =
      Pattern.compile(
          "(\\p{L}+)\\.? ?([0-9]{1,2})(?:st|nd|rd|th)?,? ([0-9]{4})", Pattern.CASE_INSENSITIVE);

  private static final int SHORTEST_MONTH = 3;
  private static final int LAST_MONTH = 12;

  private final Faults faults;

  DateCell(Faults faults) {
    this.faults = faults;
  }

  /** The day, or null where it is not understood or can be read in two ways; that is reported. */
  @Nullable LocalDate read(Cell cell) {
    String text = FoundCell.withoutApostrophe(cell.text());
    Matcher matcher = YEAR_FIRST.matcher(text);
    if (matcher.matches()) {
      return day(cell, number(matcher, 1), number(matcher, 3), number(matcher, 4));
    }
    matcher = YEAR_LAST.matcher(text);
    if (matcher.matches()) {
      return yearLast(cell, matcher);
    }
    matcher = DAY_AND_MONTH.matcher(text);
    if (matcher.matches() && month(matcher.group(2)) > 0) {
      int year = number(matcher, 3);
      boolean isShort = matcher.group(3).length() == 2;
      return day(cell, isShort ? 2000 + year : year, month(matcher.group(2)), number(matcher, 1));
    }
    matcher = MONTH_AND_DAY.matcher(text);
    if (matcher.matches() && month(matcher.group(1)) > 0) {
      return day(cell, number(matcher, 3), month(matcher.group(1)), number(matcher, 2));
    }
    report(cell, "is not understood");
    return null;
  }

  private @Nullable LocalDate yearLast(Cell cell, Matcher matcher) {
    int one = number(matcher, 1);
    int other = number(matcher, 3);
    int year = number(matcher, 4);
    boolean dayFirst = matcher.group(2).equals(".") || one > LAST_MONTH;
    if (dayFirst || other > LAST_MONTH || one == other) {
      return dayFirst ? day(cell, year, other, one) : day(cell, year, one, other);
    }
    String monthFirst = String.format(Locale.ROOT, "%04d-%02d-%02d", year, one, other);
    String dayFirstText = String.format(Locale.ROOT, "%04d-%02d-%02d", year, other, one);
    faults.add(
        cell,
        "the date " + cell.shown() + " can be read in two ways",
        "some write the day first, and others the month",
        "write " + dayFirstText + " or " + monthFirst + ", whichever is meant");
    return null;
  }

  private static int number(Matcher matcher, int group) {
    return Integer.parseInt(matcher.group(group));
  }

  /** The month of an English name, whole or cut after three letters or more; 0 for none. */
  private static int month(String name) {
    String upper = name.toUpperCase(Locale.ROOT);
    for (Month month : Month.values()) {
      if (upper.length() >= SHORTEST_MONTH && month.name().startsWith(upper)) {
        return month.getValue();
      }
    }
    return 0;
  }

  private @Nullable LocalDate day(Cell cell, int year, int month, int day) {
    try {
      return LocalDate.of(year, month, day);
    } catch (DateTimeException noDay) {
      report(cell, "is no day of the calendar");
      return null;
    }
  }

  private void report(Cell cell, String fact) {
    faults.add(
        cell,
        "the date " + cell.shown() + " " + fact,
        "a record says on which day it was proved",
        "write year, month and day, such as 2026-03-14");
  }
}
