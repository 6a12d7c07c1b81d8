package org.headhouse.linter.draft;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.draft.Column.Measure;
import org.jspecify.annotations.Nullable;

/**
 * Reads numbers with units as lists have them: a comma or a point before decimals, the unit in the
 * cell or in the heading, and more words for it than a site knows.
 */
final class QuantityCell {
  private static final Pattern NUMBER_AND_UNIT =
      Pattern.compile("([0-9]{1,9})(?:([.,])([0-9]{1,9}))?\\s*(\\p{L}*)");

  private static final Pattern CAPACITOR =
      Pattern.compile("([0-9]{1,9})(?:([.,])([0-9]{1,9}))?\\s*([np]F)");

  private final DecimalCell numbers;
  private final Faults faults;

  QuantityCell(DecimalSigns signs, Faults faults) {
    this.numbers = new DecimalCell(signs, faults);
    this.faults = faults;
  }

  /**
   * A length as a site has it, or null where it is not understood; that is reported.
   *
   * @param unit of a number without one; empty where the heading names none
   */
  @Nullable String length(Cell cell, String unit) {
    return read(cell, cell.text(), "length", Measure.LENGTH, unit, "42 m or 120 ft");
  }

  /** A terminator as a site has it: none, a resistor, or a resistor and a capacitor in series. */
  @Nullable String terminator(Cell cell, String text, String unit) {
    if (text.equalsIgnoreCase("none") || text.equalsIgnoreCase("no")) {
      return "none";
    }
    String[] parts = text.split("\\+", 2);
    String resistor =
        read(cell, parts[0].strip(), "termination", Measure.RESISTANCE, unit, "120 ohm, or none");
    if (resistor == null || parts.length == 1) {
      return resistor;
    }
    Matcher matcher = CAPACITOR.matcher(parts[1].strip());
    if (!matcher.matches()) {
      report(cell, "termination", "is not understood", "120 ohm + 1 nF");
      return null;
    }
    String number = numbers.number(cell, matcher, "termination");
    return number == null ? null : resistor + " + " + number + " " + matcher.group(4);
  }

  private @Nullable String read(
      Cell cell, String text, String what, Measure measure, String unit, String example) {
    Matcher matcher = NUMBER_AND_UNIT.matcher(text);
    String written = matcher.matches() ? matcher.group(4) : "";
    String known = written.isEmpty() ? unit : measure.unit(written);
    if (known == null || !matcher.matches()) {
      report(cell, what, "is not understood", example);
      return null;
    }
    String number = numbers.number(cell, matcher, what);
    if (number != null && known.isEmpty()) {
      report(cell, what, "has no unit", example);
      return null;
    }
    return number == null ? null : number + " " + known;
  }

  private void report(Cell cell, String what, String fact, String example) {
    boolean isLength = what.equals("length");
    faults.add(
        cell,
        "the " + what + " " + cell.shown() + " " + fact,
        "the line is computed from it",
        "write a number with its unit, such as "
            + example
            + ", or name the unit in the heading, such as "
            + (isLength ? "cable-to-next (m)" : "termination (ohm)"));
  }
}
