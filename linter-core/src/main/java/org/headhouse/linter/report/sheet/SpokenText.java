package org.headhouse.linter.report.sheet;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Dates, quantities and lists of names as people say them, for pages that growers read. */
final class SpokenText {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);
  private static final Pattern QUANTITY = Pattern.compile("([-+.0-9]+) *([a-zA-Z/0-9]+)");

  /** The end of the first word, which alone is in the plural. */
  private static final Pattern PLURAL = Pattern.compile("s(?= |$)");

  private static final Map<String, String> UNITS =
      Map.ofEntries(
          Map.entry("ohm", "ohms"),
          Map.entry("kohm", "kilohms"),
          Map.entry("V", "volts"),
          Map.entry("mV", "millivolts"),
          Map.entry("ms", "milliseconds"),
          Map.entry("s", "seconds"),
          Map.entry("min", "minutes"),
          Map.entry("m/s", "metres a second"),
          Map.entry("km/h", "kilometres an hour"),
          Map.entry("mph", "miles an hour"));

  private SpokenText() {}

  /** {@code 14 March 2026}. */
  static String day(LocalDate day) {
    return DAY.format(day);
  }

  /**
   * {@code 85 seconds} for {@code 85 s}, and {@code 1 second} for {@code 1 s}; what is not
   * understood stays as it is.
   */
  static String quantity(String written) {
    Matcher parts = QUANTITY.matcher(written.strip());
    String unit = parts.matches() ? UNITS.get(parts.group(2)) : null;
    if (unit == null) {
      return PlainText.name(written);
    }
    boolean one = parts.group(1).matches("[-+]?1");
    return parts.group(1) + " " + (one ? PLURAL.matcher(unit).replaceFirst("") : unit);
  }

  /** {@code A, B and C}; of more than some the first, and how many there are. */
  static String names(List<String> names, int most) {
    if (names.size() > most) {
      return String.join(", ", names.subList(0, most)) + " and " + (names.size() - most) + " more";
    }
    int last = names.size() - 1;
    return last <= 0
        ? String.join("", names)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }

  /** {@code 1 house}, {@code 3 houses}. */
  static String count(int number, String one) {
    return number + " " + one + (number == 1 ? "" : "s");
  }
}
