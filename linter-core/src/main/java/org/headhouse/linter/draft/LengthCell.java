package org.headhouse.linter.draft;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Quantities;
import org.jspecify.annotations.Nullable;

/** Reads lengths as lists have them. */
final class LengthCell {
  private static final Pattern NUMBER_AND_UNIT =
      Pattern.compile("([0-9]{1,9})(?:([.,])([0-9]{1,9}))?\\s*(m|ft)?");

  private LengthCell() {}

  /**
   * A length, or null where it is not understood; that is reported. A comma counts as the decimal
   * sign, but not with three digits behind it, which may be thousands.
   *
   * @param unit of a number without one; empty where the heading names none
   */
  static @Nullable Length read(Cell cell, String unit, Faults faults) {
    Matcher matcher = NUMBER_AND_UNIT.matcher(cell.text());
    if (!matcher.matches()) {
      tell(cell, "is not understood", faults);
      return null;
    }
    String decimals = matcher.group(3);
    if (",".equals(matcher.group(2)) && decimals.length() == 3) {
      faults.add(
          cell,
          "the length " + cell.shown() + " can be read in two ways",
          "a comma before three digits marks thousands to some and decimals to others",
          "write " + matcher.group(1) + decimals + " or " + matcher.group(1) + "." + decimals);
      return null;
    }
    String written = matcher.group(4) == null ? unit : matcher.group(4);
    if (written.isEmpty()) {
      tell(cell, "has no unit", faults);
      return null;
    }
    String number = matcher.group(1) + (decimals == null ? "" : "." + decimals);
    return Quantities.length(number + " " + written);
  }

  private static void tell(Cell cell, String what, Faults faults) {
    faults.add(
        cell,
        "the length " + cell.shown() + " " + what,
        "the line is computed from it",
        "write a number with its unit, such as 42 m or 120 ft, or name the unit in the heading, such"
            + " as cable-to-next (m)");
  }
}
