package org.headhouse.linter.draft;

import java.util.regex.MatchResult;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/** Reads decimal numbers as lists have them: a comma or a point before decimals, no thousands. */
@Internal
public final class DecimalCell {
  private final DecimalSigns signs;
  private final Faults faults;

  public DecimalCell(DecimalSigns signs, Faults faults) {
    this.signs = signs;
    this.faults = faults;
  }

  /**
   * The number with a point before its decimals; null where it can be read in two ways, which is
   * reported: three digits after a sign may be decimals, or the thousands of a greater number.
   *
   * @param matched the digits before the sign, the sign, and the digits after it, the last two null
   *     for a whole number
   * @param what the number is, for the report
   */
  public @Nullable String number(Cell cell, MatchResult matched, String what) {
    String whole = matched.group(1);
    String decimals = matched.group(3);
    if (decimals == null) {
      return whole;
    }
    char sign = matched.group(2).charAt(0);
    if (decimals.length() == 3 && signs.isAmbiguous(whole, sign)) {
      faults.add(
          cell,
          "the " + what + " " + cell.shown() + " can be read in two ways",
          sign == ','
              ? "a comma before three digits marks thousands to some and decimals to others"
              : "a point before three digits marks thousands where the comma is the decimal sign",
          "write " + whole + decimals + " or " + whole + sign + decimals + "0, whichever is meant");
      return null;
    }
    return whole + "." + decimals;
  }
}
