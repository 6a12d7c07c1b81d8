package org.headhouse.linter.yaml;

import java.math.BigInteger;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What a YAML 1.1 reader makes of a plain scalar that YAML 1.2's core schema reads differently.
 *
 * <p>The forms are those of the type repository of YAML 1.1 (bool, int, float, timestamp).
 */
public final class Yaml11Interpretation {
  private static final Map<String, String> TRUTH_VALUES = truthValues();
  private static final Pattern BINARY = Pattern.compile("[-+]?0b[01_]+");
  private static final Pattern OCTAL = Pattern.compile("[-+]?0[0-7_]+");
  private static final Pattern DECIMAL = Pattern.compile("[-+]?(?:0|[1-9][0-9_]*)");
  private static final Pattern HEXADECIMAL = Pattern.compile("[-+]?0x[0-9a-fA-F_]+");
  private static final Pattern SEXAGESIMAL =
      Pattern.compile("[-+]?[0-9][0-9_]*(?::[0-5]?[0-9])+(?:\\.[0-9_]*)?");
  private static final Pattern FLOAT =
      Pattern.compile("[-+]?(?:[0-9][0-9_]*)?\\.[0-9_]*(?:[eE][-+][0-9]+)?");
  private static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
  private static final Pattern TIMESTAMP =
      Pattern.compile(
          "[0-9]{4}-[0-9]{1,2}-[0-9]{1,2}(?:[Tt]|[ \\t]+)[0-9]{1,2}:[0-9]{2}:[0-9]{2}(?:\\.[0-9]*)?"
              + "(?:[ \\t]*(?:Z|[-+][0-9]{1,2}(?::?[0-9]{2})?))?");

  private Yaml11Interpretation() {}

  /** Whether the characters are a date, which either reader understands where a date is wanted. */
  public static boolean isDate(String text) {
    return DATE.matcher(text).matches();
  }

  /**
   * What a YAML 1.1 reader would read instead, in words, or empty where both read the same.
   *
   * @param text the characters of a plain scalar
   */
  public static Optional<String> of(String text) {
    return mayDiffer(text) ? of(text, CoreType.of(text)) : Optional.empty();
  }

  /**
   * Whether a YAML 1.1 reader reads a plain scalar differently.
   *
   * @param type what its characters are
   */
  static boolean differs(String text, CoreType type) {
    return mayDiffer(text) && of(text, type).isPresent();
  }

  private static Optional<String> of(String text, CoreType type) {
    return switch (type) {
      case TEXT -> ofText(text);
      case INTEGER -> ofInteger(text);
      case FLOAT -> ofFloat(text);
      case NULL, BOOLEAN -> Optional.empty();
    };
  }

  /** A quick look at the first character; most scalars end here. */
  private static boolean mayDiffer(String text) {
    if (text.isEmpty() || text.length() > 100) {
      return false;
    }
    char first = text.charAt(0);
    return (first >= '0' && first <= '9') || "+-.yYnNoO=<".indexOf(first) >= 0;
  }

  private static Map<String, String> truthValues() {
    Map<String, String> values = new HashMap<>();
    for (String word : List.of("y", "Y", "yes", "Yes", "YES", "on", "On", "ON")) {
      values.put(word, "true");
    }
    for (String word : List.of("n", "N", "no", "No", "NO", "off", "Off", "OFF")) {
      values.put(word, "false");
    }
    return values;
  }

  private static Optional<String> ofText(String text) {
    if (Character.isLetter(text.charAt(0))) {
      return Optional.ofNullable(TRUTH_VALUES.get(text));
    }
    return isQuantity(text) ? Optional.empty() : ofOtherText(text);
  }

  /**
   * Digits, a space and letters, as in {@code 120 ohm}: the most frequent text that starts like a
   * number, and nothing but text to any reader.
   */
  private static boolean isQuantity(String text) {
    int at = 0;
    while (at < text.length() && isDigitOrPoint(text.charAt(at))) {
      at++;
    }
    return at + 1 < text.length()
        && text.charAt(at) == ' '
        && Character.isLetter(text.charAt(at + 1));
  }

  /** Digits without a sign and a leading zero, as most numbers are. */
  private static boolean isPlainDecimal(String text) {
    if (text.charAt(0) == '0') {
      return false;
    }
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) < '0' || text.charAt(i) > '9') {
        return false;
      }
    }
    return true;
  }

  private static boolean isDigitOrPoint(char c) {
    return (c >= '0' && c <= '9') || c == '.';
  }

  private static Optional<String> ofOtherText(String text) {
    if (DATE.matcher(text).matches() || TIMESTAMP.matcher(text).matches()) {
      return Optional.of("a point in time");
    }
    if (SEXAGESIMAL.matcher(text).matches()) {
      return Optional.of("a number to the base 60");
    }
    if (text.indexOf('_') >= 0
        && (DECIMAL.matcher(text).matches()
            || HEXADECIMAL.matcher(text).matches()
            || OCTAL.matcher(text).matches()
            || isFloat(text))) {
      return Optional.of("the number " + text.replace("_", ""));
    }
    if (BINARY.matcher(text).matches()) {
      return Optional.of("a binary number");
    }
    if (HEXADECIMAL.matcher(text).matches()) {
      return Optional.of("a hexadecimal number");
    }
    if (text.equals("=") || text.equals("<<")) {
      return Optional.of("a special key");
    }
    return Optional.empty();
  }

  private static boolean isFloat(String text) {
    return FLOAT.matcher(text).matches() && text.chars().anyMatch(c -> c >= '0' && c <= '9');
  }

  private static Optional<String> ofInteger(String text) {
    if (isPlainDecimal(text)) {
      return Optional.empty();
    }
    if (text.startsWith("0o")) {
      return Optional.of("the text \"" + text + "\"");
    }
    if (OCTAL.matcher(text).matches()) {
      return Optional.of("the number " + new BigInteger(text, 8));
    }
    boolean same = DECIMAL.matcher(text).matches() || HEXADECIMAL.matcher(text).matches();
    return same ? Optional.empty() : Optional.of("the text \"" + text + "\"");
  }

  private static Optional<String> ofFloat(String text) {
    boolean special =
        text.endsWith("inf")
            || text.endsWith("Inf")
            || text.endsWith("INF")
            || text.equalsIgnoreCase(".nan");
    if (special || isFloat(text)) {
      return Optional.empty();
    }
    return Optional.of("the text \"" + text + "\"");
  }
}
