package org.headhouse.linter.figures;

import java.util.Locale;
import org.headhouse.linter.line.ReadingRange;
import org.headhouse.linter.stability.Internal;

/**
 * A unit that a meter shows, with as many decimals as it shows there. Limits are rounded into the
 * range, so that a reading outside is outside of what is printed as well.
 */
@Internal
public enum ReadingUnit {
  OHM("ohm", 1, 1),
  KILOHM("kohm", 1e3, 4),
  VOLT("V", 1, 3),
  MILLIVOLT("mV", 1e-3, 0);

  private final String unit;
  private final double size;
  private final int decimals;

  ReadingUnit(String unit, double size, int decimals) {
    this.unit = unit;
    this.size = size;
    this.decimals = decimals;
  }

  /** The unit of a quantity as it is written. */
  public static ReadingUnit of(String written) {
    if (written.endsWith("ohm")) {
      return written.endsWith("kohm") ? KILOHM : OHM;
    }
    return written.endsWith("mV") ? MILLIVOLT : VOLT;
  }

  /** {@code 53.6 to 66.3 ohm}; {@code at least 0.206 V} without an upper limit. */
  public String range(ReadingRange range) {
    return Double.isInfinite(range.high())
        ? "at least " + atLeast(range.low())
        : digits(Math.ceil(range.low() * steps()))
            + " to "
            + digits(Math.floor(range.high() * steps()))
            + " "
            + unit;
  }

  /** A limit rounded up: {@code 206 mV}. */
  public String atLeast(double limit) {
    return digits(Math.ceil(limit * steps())) + " " + unit;
  }

  private double steps() {
    return Math.pow(10, decimals) / size;
  }

  private String digits(double steps) {
    return String.format(Locale.ROOT, "%." + decimals + "f", steps / Math.pow(10, decimals));
  }
}
