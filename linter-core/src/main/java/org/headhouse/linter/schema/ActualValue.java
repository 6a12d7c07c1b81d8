package org.headhouse.linter.schema;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.headhouse.linter.yaml.CoreType;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;

/** A value of the file, in the words of a sentence. */
record ActualValue(Node.Valued node) {
  private static final int LONGEST = 60;
  private static final Set<String> YES = Set.of("true", "yes", "y", "on");
  private static final Set<String> NO = Set.of("false", "no", "n", "off");

  /** The characters of a scalar; empty for a list or a block of keys. */
  String text() {
    return node instanceof Scalar scalar ? scalar.text() : "";
  }

  /** Whether nothing is written, or the word for nothing. */
  boolean isNothing() {
    return is(CoreType.NULL);
  }

  boolean isNumber() {
    return is(CoreType.INTEGER) || is(CoreType.FLOAT);
  }

  boolean is(CoreType type) {
    return node instanceof Scalar scalar && scalar.type() == type;
  }

  /** Whether the quotes make text of what would be something else without them. */
  boolean isTextByItsQuotes() {
    return node instanceof Scalar scalar
        && !scalar.plain()
        && CoreType.of(scalar.text()) != CoreType.TEXT;
  }

  /** The truth value that the characters stand for in any version of YAML. */
  Optional<Boolean> truth() {
    String word = text().strip().toLowerCase(Locale.ROOT);
    if (YES.contains(word)) {
      return Optional.of(true);
    }
    return NO.contains(word) ? Optional.of(false) : Optional.empty();
  }

  /** The value for a sentence: text in quotes, all else without. */
  String shown() {
    if (node instanceof Scalar scalar) {
      return scalar.type() == CoreType.TEXT
          ? (isTextByItsQuotes() ? "the text " : "") + shortened(scalar.text())
          : cut(scalar.text());
    }
    return node instanceof Sequence ? "a list" : "a mapping";
  }

  /** The value with its kind, for a sentence about the kind. */
  String shownWithKind() {
    return (isNumber() ? "the number " : is(CoreType.BOOLEAN) ? "the value " : "") + shown();
  }

  /** Text in quotes, on one line and not too long. */
  static String shortened(String text) {
    return "\"" + cut(text) + "\"";
  }

  private static String cut(String text) {
    String line = text.replaceAll("\\R", " ");
    return line.codePointCount(0, line.length()) > LONGEST
        ? line.substring(0, line.offsetByCodePoints(0, LONGEST)) + "…"
        : line;
  }
}
