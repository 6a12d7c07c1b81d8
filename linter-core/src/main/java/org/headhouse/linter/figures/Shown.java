package org.headhouse.linter.figures;

import java.util.Locale;
import org.headhouse.linter.stability.Internal;

/** How figures are written for people: as many digits as the trade uses, and the unit. */
@Internal
public final class Shown {
  private static final int MOST_DIGITS = 6;

  private Shown() {}

  /** {@code 237 mV}; from 10 V on {@code 12.0 V}. */
  public static String volts(double volts) {
    return Math.abs(volts) < 10 ? format("%.0f mV", volts * 1e3) : format("%.1f V", volts);
  }

  /** {@code 58.4 ohm}; from 1000 ohm on {@code 1.25 kohm}. */
  public static String ohms(double ohms) {
    if (Double.isInfinite(ohms)) {
      return "an open pair";
    }
    return ohms < 1000 ? format("%.1f ohm", ohms) : format("%.2f kohm", ohms / 1e3);
  }

  /** A nominal value of a resistor: {@code 470 ohm}, {@code 1.2 kohm}. */
  public static String resistor(double ohms) {
    return ohms < 1000 ? trimmed(ohms) + " ohm" : trimmed(ohms / 1e3) + " kohm";
  }

  /** {@code 1042 m}, {@code 1000.4 m}, {@code 2.3 m}; below a metre {@code 0.07 m}. */
  public static String metres(double metres) {
    return metres < 1 ? format("%.2f m", metres) : trimmed(Math.rint(metres * 10) / 10) + " m";
  }

  /** A length of metres in feet: {@code 138 ft}, {@code 137.8 ft}, {@code 0.3 ft}. */
  public static String feet(double metres) {
    double feet = Measure.US.lengthOf(metres);
    return feet < 0.1 ? format("%.2f ft", feet) : trimmed(Math.rint(feet * 10) / 10) + " ft";
  }

  /** A mark on an axis: as many digits as it needs, at most three decimals. */
  public static String plain(double number) {
    return trimmed(number);
  }

  /** A capacitor: {@code 1 nF}; below that {@code 470 pF}. */
  public static String capacitor(double farads) {
    return farads < 1e-9 ? trimmed(farads * 1e12) + " pF" : trimmed(farads * 1e9) + " nF";
  }

  /** The voltage of a supply: {@code 5 V}, {@code 4.75 V}. */
  public static String supply(double volts) {
    return trimmed(volts) + " V";
  }

  /** {@code 45}, {@code 37.5}: a number of degrees. */
  static String degrees(double degrees) {
    return trimmed(Math.rint(degrees * 10) / 10);
  }

  /** {@code 1.15 ms}: a time that is a part of others. */
  public static String millis(double seconds) {
    return format("%.2f ms", seconds * 1e3);
  }

  /** {@code 104 µs}; below 10 µs {@code 3.1 µs}; from 1000 µs {@code 1.2 ms}. */
  public static String micros(double seconds) {
    double micros = seconds * 1e6;
    return micros < 9.95
        ? format("%.1f µs", micros)
        : micros < 1000 ? format("%.0f µs", micros) : format("%.1f ms", micros / 1e3);
  }

  /** {@code 5.2 s}; below a second {@code 142 ms}. */
  public static String seconds(double seconds) {
    return seconds < 1 ? format("%.0f ms", seconds * 1e3) : format("%.1f s", seconds);
  }

  /**
   * A time beside a limit, in as many digits as show on which side of it it is: {@code 142 ms},
   * {@code 142.3 ms}.
   */
  public static String secondsBeside(double limit, double seconds) {
    return seconds < 1
        ? beside(limit * 1e3, seconds * 1e3, 0) + " ms"
        : beside(limit, seconds, 1) + " s";
  }

  /** The same of a voltage: {@code 199 mV}, {@code 199.7 mV}; from 10 V on {@code 12.04 V}. */
  public static String voltsBeside(double limit, double volts) {
    return Math.abs(volts) < 10
        ? beside(limit * 1e3, volts * 1e3, 0) + " mV"
        : beside(limit, volts, 1) + " V";
  }

  /** The same of a resistance below 1000 ohm: {@code 53.9 ohm}, {@code 53.98 ohm}. */
  public static String ohmsBeside(double limit, double ohms) {
    return ohms < 1000 ? beside(limit, ohms, 1) + " ohm" : ohms(ohms);
  }

  /** The same of a share: {@code 71 %}, {@code 70.02 %}. */
  public static String percentBeside(double limit, double share) {
    return beside(limit * 100, share * 100, 0) + " %";
  }

  /** The same of a margin, whose limit is 0: {@code -0.3 dB}, {@code -0.01 dB}. */
  public static String marginDecibels(double decibels) {
    return beside(0, decibels, 1) + " dB";
  }

  /** A value in as many digits as show on which side of a limit it is. */
  private static String beside(double limit, double value, int digits) {
    String shown = format("%." + digits + "f", value);
    for (int more = digits + 1; more <= MOST_DIGITS && !isOnSide(shown, limit, value); more++) {
      shown = format("%." + more + "f", value);
    }
    return shown;
  }

  /** What is shown as -0 is no less than 0. */
  private static boolean isOnSide(String shown, double limit, double value) {
    return Math.signum(Double.parseDouble(shown) - limit) == Math.signum(value - limit);
  }

  /** {@code 71 %}. */
  public static String percent(double share) {
    return format("%.0f %%", share * 100);
  }

  /** {@code 1.4 %}, for shares that the reader adds up. */
  public static String share(double share) {
    return format("%.1f %%", share * 100);
  }

  /** {@code 5 %}, {@code 0.5 %}: a tolerance as people write it. */
  public static String tolerance(double share) {
    return trimmed(share * 100) + " %";
  }

  /** {@code 3.5 dB}. */
  public static String decibels(double decibels) {
    return format("%.1f dB", decibels);
  }

  /** {@code 32.5}, {@code 33}: a number of unit loads. */
  public static String unitLoads(double number) {
    return trimmed(number);
  }

  /** A length rounded down, so that it stays within a limit. */
  public static String atMostMetres(double metres) {
    double steps = metres < 1 ? 100 : metres < 10 ? 10 : 1;
    return trimmed(Math.floor(metres * steps) / steps) + " m";
  }

  /** The same in feet. */
  static String atMostFeet(double metres) {
    double feet = Measure.US.lengthOf(metres);
    double steps = feet < 1 ? 100 : feet < 30 ? 10 : 1;
    return trimmed(Math.floor(feet * steps) / steps) + " ft";
  }

  /** A time rounded up to a value that people write. */
  public static double atLeast(double seconds) {
    double steps = seconds <= 1 ? 100 : 2;
    return Math.ceil(seconds * steps) / steps;
  }

  /** {@link #atLeast} in words: {@code 590 ms}, {@code 3.5 s}. */
  public static String atLeastSeconds(double seconds) {
    double rounded = atLeast(seconds);
    return seconds <= 1 ? trimmed(rounded * 1e3) + " ms" : trimmed(rounded) + " s";
  }

  /** A time rounded down to a value that people write; nothing under 10 ms. */
  public static double atMost(double seconds) {
    double steps = seconds < 1 ? 100 : seconds < 10 ? 10 : 2;
    return Math.floor(seconds * steps) / steps;
  }

  /** {@link #atMost} in words: {@code 590 ms}, {@code 3.7 s}. */
  public static String atMostSeconds(double seconds) {
    double rounded = atMost(seconds);
    return rounded < 1 ? trimmed(rounded * 1e3) + " ms" : trimmed(rounded) + " s";
  }

  private static String trimmed(double value) {
    String text = format("%.3f", value);
    int end = text.length();
    while (text.charAt(end - 1) == '0') {
      end--;
    }
    return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
  }

  private static String format(String pattern, double value) {
    return String.format(Locale.ROOT, pattern, value);
  }
}
