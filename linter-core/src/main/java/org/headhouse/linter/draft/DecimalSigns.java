package org.headhouse.linter.draft;

import java.util.List;
import java.util.regex.Pattern;
import org.headhouse.linter.stability.Internal;

/**
 * Which signs a list writes before decimals: then three digits after the other sign, or after the
 * same one, may be thousands.
 *
 * @param isComma whether some number of the list has a comma that can only be the decimal sign
 * @param isPoint the same of a point
 * @param mayBeComma whether cells are separated by something else than commas, as they are where
 *     the comma is the decimal sign
 */
@Internal
public record DecimalSigns(boolean isComma, boolean isPoint, boolean mayBeComma) {
  private static final Pattern COMMA = certain(",");
  private static final Pattern POINT = certain("\\.");

  /** One, two, or more than three decimals, or three after a number that no thousands follow. */
  private static Pattern certain(String sign) {
    return Pattern.compile(
        "(?<![0-9.,])(?:[0-9]+"
            + sign
            + "(?:[0-9]{1,2}|[0-9]{4,})|(?:0[0-9]*|[0-9]{4,})"
            + sign
            + "[0-9]{3})(?![0-9.,])");
  }

  /** The signs of the numbers in some cells. */
  public static DecimalSigns of(List<Cell> cells, char separator) {
    return new DecimalSigns(any(COMMA, cells), any(POINT, cells), separator != ',');
  }

  private static boolean any(Pattern pattern, List<Cell> cells) {
    return cells.stream().anyMatch(cell -> pattern.matcher(cell.text()).find());
  }

  /** Whether a number with three digits after a sign can be read in two ways. */
  public boolean isAmbiguous(String whole, char sign) {
    boolean mayBeThousands = whole.length() <= 3 && !whole.startsWith("0");
    return mayBeThousands && (sign == ',' || isComma || (mayBeComma && !isPoint));
  }
}
