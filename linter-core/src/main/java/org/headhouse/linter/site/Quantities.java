package org.headhouse.linter.site;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads quantities as files write them: a number and a unit, with or without a space between.
 *
 * <p>Each method returns null for what is not such a quantity. The forms are the patterns of the
 * published JSON Schemas.
 */
public final class Quantities {
  private static final double METRES_PER_FOOT = 0.3048;
  private static final double METRES_PER_MILE = 1609.344;

  /** In a metre per second. */
  private static final double KILOMETRES_PER_HOUR = 3.6;

  private static final int MOST_DIGITS = 9;
  private static final Pattern UNIT_LOAD =
      Pattern.compile("[1-9][0-9]{0,2}(?:/[1-9][0-9]{0,2})?|0\\.0{0,5}[1-9][0-9]{0,5}");

  private Quantities() {}

  /** A length in {@code m} or {@code ft}. */
  public static @Nullable Length length(String written) {
    int unit = unit(written);
    return switch (unitText(written, unit)) {
      case "m" -> new Length(number(written, unit), written);
      case "ft" -> new Length(number(written, unit) * METRES_PER_FOOT, written);
      default -> null;
    };
  }

  /** A resistance in {@code ohm} or {@code kohm}. */
  public static @Nullable Resistance resistance(String written) {
    int unit = unit(written);
    return switch (unitText(written, unit)) {
      case "ohm" -> new Resistance(number(written, unit), written);
      case "kohm" -> new Resistance(number(written, unit) * 1e3, written);
      default -> null;
    };
  }

  /** A voltage in {@code V} or {@code mV}. */
  public static @Nullable Voltage voltage(String written) {
    int unit = unit(written);
    return switch (unitText(written, unit)) {
      case "V" -> new Voltage(number(written, unit), written);
      case "mV" -> new Voltage(number(written, unit) / 1e3, written);
      default -> null;
    };
  }

  /** A voltage as a meter shows it, in {@code V} or {@code mV}, below zero too. */
  public static @Nullable Voltage measuredVoltage(String written) {
    boolean negative = written.startsWith("-");
    Voltage size = voltage(negative ? written.substring(1) : written);
    return size == null ? null : new Voltage(negative ? -size.volts() : size.volts(), written);
  }

  /** A speed of the wind in {@code m/s}, {@code km/h} or {@code mph}. */
  public static @Nullable WindSpeed windSpeed(String written) {
    int unit = unit(written);
    return switch (unitText(written, unit)) {
      case "m/s" -> new WindSpeed(number(written, unit), written);
      case "km/h" -> new WindSpeed(number(written, unit) / KILOMETRES_PER_HOUR, written);
      case "mph" -> new WindSpeed(number(written, unit) * METRES_PER_MILE / 3600, written);
      default -> null;
    };
  }

  /** A share in {@code %}, less than all. */
  public static @Nullable Percentage percentage(String written) {
    int unit = unit(written);
    if (!unitText(written, unit).equals("%")) {
      return null;
    }
    double share = number(written, unit) / 100;
    return share < 1 ? new Percentage(share, written) : null;
  }

  /** A time in {@code ms}, {@code s} or {@code min}. */
  public static @Nullable Interval interval(String written) {
    int unit = unit(written);
    return switch (unitText(written, unit)) {
      case "ms" -> new Interval(number(written, unit) / 1e3, written);
      case "s" -> new Interval(number(written, unit), written);
      case "min" -> new Interval(number(written, unit) * 60, written);
      default -> null;
    };
  }

  /** A rise time in {@code ns}. */
  public static @Nullable Interval riseTime(String written) {
    int unit = unit(written);
    return unitText(written, unit).equals("ns")
        ? new Interval(number(written, unit) / 1e9, written)
        : null;
  }

  /** A capacitance in {@code nF} or {@code pF}. */
  public static @Nullable Capacitance capacitance(String written) {
    int unit = unit(written);
    return switch (unitText(written, unit)) {
      case "nF" -> new Capacitance(number(written, unit) / 1e9, written);
      case "pF" -> new Capacitance(number(written, unit) / 1e12, written);
      default -> null;
    };
  }

  /** A temperature in {@code degC} or {@code degF}; the only quantity that may be negative. */
  public static @Nullable Temperature temperature(String written) {
    boolean negative = written.startsWith("-");
    String size = negative ? written.substring(1) : written;
    int unit = unit(size);
    String word = unitText(size, unit);
    if (!word.equals("degC") && !word.equals("degF")) {
      return null;
    }
    double degrees = negative ? -number(size, unit) : number(size, unit);
    double celsius = word.equals("degC") ? degrees : (degrees - 32) / 1.8;
    return new Temperature(celsius, written);
  }

  /** The size of a conductor in {@code AWG}, a whole number from 0 to 40, or in {@code mm2}. */
  public static @Nullable Gauge gauge(String written) {
    int unit = unit(written);
    return switch (unitText(written, unit)) {
      case "AWG" -> awg(written, unit);
      case "mm2" -> new Gauge.Area(number(written, unit), written);
      default -> null;
    };
  }

  private static Gauge.@Nullable Awg awg(String written, int unit) {
    String digits = written.substring(0, unit).stripTrailing();
    if (digits.length() > 2
        || digits.indexOf('.') >= 0
        || (digits.length() == 2 && digits.charAt(0) == '0')) {
      return null;
    }
    int number = Integer.parseInt(digits);
    return number <= 40 ? new Gauge.Awg(number, written) : null;
  }

  /** {@code none}, a resistance, or a resistance and a capacitance with a plus sign between. */
  public static @Nullable Termination termination(String written) {
    if (written.equals("none")) {
      return new Termination(null, null, written);
    }
    int plus = written.indexOf('+');
    if (plus < 0) {
      Resistance resistance = resistance(written);
      return resistance == null ? null : new Termination(resistance, null, written);
    }
    Resistance resistance = resistance(trimEnd(written.substring(0, plus)));
    Capacitance capacitance = capacitance(trimStart(written.substring(plus + 1)));
    return resistance == null || capacitance == null
        ? null
        : new Termination(resistance, capacitance, written);
  }

  /** A unit load written as text: {@code 1/8}, {@code 1} or {@code 0.125}. */
  public static @Nullable Double unitLoad(String written) {
    if (!UNIT_LOAD.matcher(written).matches()) {
      return null;
    }
    int slash = written.indexOf('/');
    return slash < 0
        ? Double.parseDouble(written)
        : Double.parseDouble(written.substring(0, slash))
            / Double.parseDouble(written.substring(slash + 1));
  }

  /** Where the unit starts after the number and the spaces; -1 where there is no number. */
  private static int unit(String written) {
    int end = endOfNumber(written);
    if (end < 0) {
      return -1;
    }
    while (end < written.length() && written.charAt(end) == ' ') {
      end++;
    }
    return end;
  }

  /** Digits, then optionally a point and digits; at most nine of each. */
  private static int endOfNumber(String written) {
    int whole = digits(written, 0);
    if (whole == 0 || whole > MOST_DIGITS) {
      return -1;
    }
    if (whole == written.length() || written.charAt(whole) != '.') {
      return whole;
    }
    int end = digits(written, whole + 1);
    int fraction = end - whole - 1;
    return fraction == 0 || fraction > MOST_DIGITS ? -1 : end;
  }

  private static int digits(String text, int from) {
    int at = from;
    while (at < text.length() && isDigit(text.charAt(at))) {
      at++;
    }
    return at;
  }

  private static String unitText(String written, int unit) {
    return unit < 0 ? "" : written.substring(unit);
  }

  private static double number(String written, int unit) {
    int whole = 0;
    int at = 0;
    while (at < unit && isDigit(written.charAt(at))) {
      whole = whole * 10 + (written.charAt(at) - '0'); // nine digits at most
      at++;
    }
    boolean isWhole = at == unit || written.charAt(at) == ' ';
    return isWhole ? whole : Double.parseDouble(written.substring(0, unit));
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static String trimEnd(String text) {
    int end = text.length();
    while (end > 0 && text.charAt(end - 1) == ' ') {
      end--;
    }
    return text.substring(0, end);
  }

  private static String trimStart(String text) {
    int start = 0;
    while (start < text.length() && text.charAt(start) == ' ') {
      start++;
    }
    return text.substring(start);
  }
}
