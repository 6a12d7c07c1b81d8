package org.headhouse.linter.schema;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import org.headhouse.linter.yaml.CoreType;

/** The plain decimal form of a number, which every reader understands alike. */
public final class PlainNumber {
  private static final int LONGEST = 30;
  private static final int LARGEST_EXPONENT = 30;

  private PlainNumber() {}

  /**
   * The plain decimal form of characters that YAML 1.2, or else only YAML 1.1, reads as a number.
   */
  public static Optional<String> of(String text) {
    if (text.length() > LONGEST) {
      return Optional.empty();
    }
    try {
      return switch (CoreType.of(text)) {
        case INTEGER -> Optional.of(integer(text).toString());
        case FLOAT -> decimal(text);
        case TEXT -> older(text);
        case NULL, BOOLEAN -> Optional.empty();
      };
    } catch (NumberFormatException noNumber) {
      return Optional.empty();
    }
  }

  private static BigInteger integer(String text) {
    if (text.startsWith("0o")) {
      return new BigInteger(text.substring(2), 8);
    }
    return text.startsWith("0x") ? new BigInteger(text.substring(2), 16) : new BigInteger(text);
  }

  private static Optional<String> decimal(String text) {
    BigDecimal value = new BigDecimal(text);
    return Math.abs((long) value.scale()) > LARGEST_EXPONENT
        ? Optional.empty()
        : Optional.of(shortest(value));
  }

  private static String shortest(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }

  /** Digits with underscores between. */
  private static Optional<String> older(String text) {
    String digits = text.replace("_", "");
    return text.matches("[-+]?[1-9][0-9_]*")
        ? Optional.of(integer(digits).toString())
        : Optional.empty();
  }
}
