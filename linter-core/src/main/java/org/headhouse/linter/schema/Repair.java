package org.headhouse.linter.schema;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Guesses what was meant by text of the wrong form. What the schema does not accept is never
 * proposed.
 */
final class Repair {
  private static final Pattern DATE =
      Pattern.compile("([0-9]{4})[-/. ]?([0-9]{1,2})[-/. ]?([0-9]{1,2})");

  private Repair() {}

  /** The text that was probably meant, where it can be known. */
  static Optional<String> of(ActualValue actual, ExpectedValue expected) {
    String text = actual.text().strip();
    if (!expected.has("pattern") || text.isEmpty() || text.length() > 100) {
      return Optional.empty();
    }
    return Stream.of(
            none(actual),
            Optional.of(text),
            Optional.of(text.replace(" ", "")),
            date(text),
            QuantityRepair.of(actual, expected),
            Optional.of(id(text)))
        .flatMap(Optional::stream)
        .filter(guess -> !guess.equals(actual.text()))
        .filter(expected::accepts)
        .findFirst();
  }

  /** The ways in which people say that there is nothing of a kind. */
  private static Optional<String> none(ActualValue actual) {
    String text = actual.text().strip().toLowerCase(Locale.ROOT);
    boolean isNone =
        actual.truth().equals(Optional.of(false))
            || text.equals("none")
            || text.equals("nothing")
            || text.equals("0");
    return isNone ? Optional.of("none") : Optional.empty();
  }

  /** Only where the order of year, month and day is beyond doubt. */
  private static Optional<String> date(String text) {
    Matcher matcher = DATE.matcher(text);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          LocalDate.of(
                  Integer.parseInt(matcher.group(1)),
                  Integer.parseInt(matcher.group(2)),
                  Integer.parseInt(matcher.group(3)))
              .toString());
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }

  private static String id(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[\\s_.-]+", "-").replaceAll("^-|-$", "");
  }
}
