package org.headhouse.linter.yaml;

/** The type of a plain scalar under the core schema of YAML 1.2 (chapter 10.3.2). */
public enum CoreType {
  NULL,
  BOOLEAN,
  INTEGER,
  FLOAT,
  TEXT;

  /** The type that a plain scalar's characters have. */
  public static CoreType of(String text) {
    if (text.isEmpty()) {
      return NULL;
    }
    char first = text.charAt(0);
    if (isDigit(first) || first == '-' || first == '+' || first == '.') {
      return ofNumber(text);
    }
    return switch (text) {
      case "~", "null", "Null", "NULL" -> NULL;
      case "true", "True", "TRUE", "false", "False", "FALSE" -> BOOLEAN;
      default -> TEXT;
    };
  }

  private static CoreType ofNumber(String text) {
    if (text.startsWith("0o")) {
      return allIn(text, 2, "01234567") ? INTEGER : TEXT;
    }
    if (text.startsWith("0x")) {
      return allIn(text, 2, "0123456789abcdefABCDEF") ? INTEGER : TEXT;
    }
    int start = text.charAt(0) == '-' || text.charAt(0) == '+' ? 1 : 0;
    return switch (text.substring(start)) {
      case ".inf", ".Inf", ".INF" -> FLOAT;
      case ".nan", ".NaN", ".NAN" -> start == 0 ? FLOAT : TEXT;
      default -> ofDecimal(text, start);
    };
  }

  /** Digits, optionally a point and digits, optionally an exponent; at least one digit in front. */
  private static CoreType ofDecimal(String text, int start) {
    int whole = digits(text, start);
    int at = whole;
    boolean isInteger = true;
    boolean anyDigit = whole > start;
    if (at < text.length() && text.charAt(at) == '.') {
      int fraction = digits(text, at + 1);
      anyDigit |= fraction > at + 1;
      at = fraction;
      isInteger = false;
    }
    if (anyDigit && at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
      int sign = at + 1;
      if (sign < text.length() && (text.charAt(sign) == '+' || text.charAt(sign) == '-')) {
        sign++;
      }
      int exponent = digits(text, sign);
      at = exponent > sign ? exponent : at;
      isInteger = false;
    }
    if (!anyDigit || at < text.length()) {
      return TEXT;
    }
    return isInteger ? INTEGER : FLOAT;
  }

  private static int digits(String text, int from) {
    int at = from;
    while (at < text.length() && isDigit(text.charAt(at))) {
      at++;
    }
    return at;
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static boolean allIn(String text, int from, String allowed) {
    for (int i = from; i < text.length(); i++) {
      if (allowed.indexOf(text.charAt(i)) < 0) {
        return false;
      }
    }
    return text.length() > from;
  }
}
