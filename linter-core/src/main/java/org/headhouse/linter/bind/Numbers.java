package org.headhouse.linter.bind;

import java.math.BigDecimal;
import org.headhouse.linter.yaml.CoreType;
import org.headhouse.linter.yaml.Scalar;
import org.jspecify.annotations.Nullable;

/** Reads numbers as YAML's core schema writes them, without ever taking long over one. */
final class Numbers {
  private static final int MOST_CHARACTERS = 12;

  private Numbers() {}

  /**
   * The whole number that a scalar is, or null. Also {@code 2.0} is a whole number, as it is for
   * JSON Schema; what has more characters than any number of a definition is not looked at.
   */
  static @Nullable Integer whole(Scalar scalar) {
    String text = scalar.text();
    CoreType type = scalar.type();
    if (text.length() > MOST_CHARACTERS || (type != CoreType.INTEGER && type != CoreType.FLOAT)) {
      return null;
    }
    try {
      if (text.startsWith("0o")) {
        return Integer.valueOf(text.substring(2), 8);
      }
      if (text.startsWith("0x")) {
        return Integer.valueOf(text.substring(2), 16);
      }
      return type == CoreType.INTEGER ? Integer.valueOf(text) : ofFloat(text);
    } catch (NumberFormatException | ArithmeticException beyondRange) {
      return null;
    }
  }

  /** The number that a scalar is, or null. */
  static @Nullable Double decimal(Scalar scalar) {
    String text = scalar.text();
    if (text.length() > MOST_CHARACTERS || text.startsWith("0o") || text.startsWith("0x")) {
      Integer whole = whole(scalar);
      return whole == null ? null : Double.valueOf(whole);
    }
    boolean isWord = text.indexOf('n') >= 0 || text.indexOf('N') >= 0;
    return isWord ? null : Double.valueOf(text);
  }

  private static @Nullable Integer ofFloat(String text) {
    double value = text.indexOf('n') >= 0 || text.indexOf('N') >= 0 ? Double.NaN : parse(text);
    return value == Math.rint(value) && Math.abs(value) <= Integer.MAX_VALUE ? (int) value : null;
  }

  private static double parse(String text) {
    return new BigDecimal(text).doubleValue();
  }
}
