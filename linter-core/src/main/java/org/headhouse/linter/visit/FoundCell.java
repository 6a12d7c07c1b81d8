package org.headhouse.linter.visit;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.draft.Cell;
import org.headhouse.linter.draft.DecimalCell;
import org.headhouse.linter.draft.DecimalSigns;
import org.headhouse.linter.draft.Faults;
import org.headhouse.linter.proof.VisitEntry;
import org.jspecify.annotations.Nullable;

/** Reads what was found; what is not understood is a fault, and never a guess. */
final class FoundCell {
  private static final Set<String> YES = Set.of("yes", "y", "x", "ok", "seen", "\u2713", "\u2714");
  private static final Set<String> NO = Set.of("no", "n", "not seen");

  private static final Pattern NUMBER =
      Pattern.compile("([0-9]{1,9})(?:([.,])([0-9]{1,9}))?\\s*([\\p{L}/]*)");

  /** A sign before a number: a hyphen, a minus sign, or a plus. */
  private static final Pattern SIGN = Pattern.compile("([-+\u2212]) ?(?=[0-9.,])");

  private static final Pattern RANGE =
      Pattern.compile(
          "at (?:least|most) .*|.*[0-9].* to .*[0-9].*|.*[0-9] ?[-\u2013] ?[0-9].*",
          Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

  /** Longer texts are no range; to look for one would take a time that grows with their square. */
  private static final int LONGEST_RANGE = 200;

  /** With the forms of full width, which some spreadsheets take for the same. */
  private static final String SIGNS_OF_FORMULAS = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";

  private final DecimalCell numbers;
  private final Faults faults;

  FoundCell(DecimalSigns signs, Faults faults) {
    this.numbers = new DecimalCell(signs, faults);
    this.faults = faults;
  }

  /** Whether a cell says nothing, so that nothing was seen. */
  static boolean isBlank(Cell cell) {
    return cell.saysNothing();
  }

  /**
   * What a cell says; nothing where it is not understood, which is reported.
   *
   * @param acceptable what the list says is acceptable
   * @param heading the unit that the row asks for; empty for none
   */
  Found read(VisitEntry entry, Cell cell, Cell acceptable, String heading) {
    if (isBlank(cell) || reportsFormula(cell, faults)) {
      return Found.Nothing.NOTHING;
    }
    Measurand measurand = Measurand.of(entry);
    Found seen = seen(cell);
    if (measurand == null || (entry == VisitEntry.STORM_RESPONSE && seen != null)) {
      if (seen == null) {
        faults.add(
            cell,
            "it is not understood whether " + cell.shown() + " is a yes",
            "what nobody saw must not look as if it was seen",
            "write yes where it was seen, and no, or nothing, where it was not");
      }
      return seen == null ? Found.Nothing.NOTHING : seen;
    }
    String written = value(measurand, cell, acceptable, heading);
    return written == null ? Found.Nothing.NOTHING : new Found.Value(written);
  }

  private static @Nullable Found seen(Cell cell) {
    String word = cell.text().toLowerCase(Locale.ROOT);
    return YES.contains(word) ? Found.Seen.YES : NO.contains(word) ? Found.Seen.NO : null;
  }

  private @Nullable String value(Measurand measurand, Cell cell, Cell acceptable, String heading) {
    String text = withoutApostrophe(cell.text());
    Matcher signed = SIGN.matcher(text);
    boolean negative = signed.lookingAt() && !signed.group(1).equals("+");
    String size = signed.lookingAt() ? text.substring(signed.end()) : text;
    Matcher matcher =
        NUMBER.matcher(size.startsWith(".") || size.startsWith(",") ? "0" + size : size);
    if (text.equals(acceptable.text()) || (!matcher.matches() && isRange(text))) {
      faults.add(
          cell,
          cell.shown() + " is what is acceptable, and not what was found",
          "a record of what should be proves nothing",
          "write the value that the meter or the watch showed, or nothing");
      return null;
    }
    String unit =
        matcher.matches() && !matcher.group(4).isEmpty()
            ? measurand.unit(matcher.group(4))
            : measurand.unit(heading);
    if (!matcher.matches() || unit == null || (negative && measurand != Measurand.VOLTAGE)) {
      faults.add(
          cell,
          "the value " + cell.shown() + " is not understood",
          "the check compares it with what is computed",
          "write the value with its unit, such as " + measurand.example() + ", or nothing");
      return null;
    }
    String number = numbers.number(cell, matcher, "value");
    return number == null ? null : (negative ? "-" : "") + number + " " + unit;
  }

  private static boolean isRange(String text) {
    return text.length() <= LONGEST_RANGE && RANGE.matcher(text).matches();
  }

  /** Spreadsheets mark a text with an apostrophe that is not part of it. */
  static String withoutApostrophe(String text) {
    return text.startsWith("'") ? text.substring(1) : text;
  }

  /** Whether a cell begins as a formula does, and is no number; that is reported. */
  static boolean reportsFormula(Cell cell, Faults faults) {
    String text = withoutApostrophe(cell.text());
    boolean starts = !text.isEmpty() && SIGNS_OF_FORMULAS.indexOf(text.charAt(0)) >= 0;
    Matcher signed = SIGN.matcher(text);
    boolean isNumber =
        signed.lookingAt() && text.substring(signed.end()).matches("[0-9.,]+\\s*[\\p{L}/]*");
    if (starts && !isNumber) {
      faults.add(
          cell,
          "the cell " + cell.shown() + " begins like a formula",
          "a spreadsheet shows something else than what it says",
          "write what was found, and no formula");
    }
    return starts && !isNumber;
  }
}
