package org.headhouse.linter.schema;

import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Sequence;

/**
 * Says what is wrong with a value and what it should have been.
 *
 * @param keyword the keyword of the schema that refused the value
 */
record ValueWords(String keyword, Wanted wanted, Written written) {

  /** The rule that the failed keyword belongs to. */
  String rule() {
    return switch (keyword) {
      case "type" -> isQuantity() ? "schema.bad-quantity" : "schema.wrong-type";
      case "pattern" -> isQuantity() ? "schema.bad-quantity" : "schema.bad-value";
      case "enum" -> "schema.bad-value";
      default -> "schema.out-of-range";
    };
  }

  /** A quantity is text that must match a pattern with units, or with a fraction, in it. */
  private boolean isQuantity() {
    String pattern = wanted.get("pattern").asString("");
    return pattern.contains(" *") || pattern.contains("(?:/");
  }

  /** What is written, as the rest of a sentence that starts with the value's name. */
  String fact() {
    if (written.isNothing()) {
      return "has no value";
    }
    return switch (keyword) {
      case "type" -> "is " + written.shownWithKind();
      case "minLength" -> "is empty";
      case "maxLength" ->
          "has " + written.text().codePointCount(0, written.text().length()) + " characters";
      case "minItems", "maxItems" -> "has " + items(size(written.node()));
      default -> "cannot be " + written.shown();
    };
  }

  private static int size(Node.Valued node) {
    return node instanceof Sequence sequence
        ? sequence.items().size()
        : node instanceof Mapping mapping ? mapping.entries().size() : 0;
  }

  private static String items(int number) {
    return number == 0 ? "no items" : number == 1 ? "1 item" : number + " items";
  }

  /** One clause: what is wanted. */
  String expectation() {
    if (wanted.has("enum")) {
      String words = String.join(", ", wanted.words());
      return wanted.words().size() == 1 ? "it is always " + words : "it is one of " + words;
    }
    if (keyword.equals("maxLength")) {
      return "it is text of at most " + wanted.get("maxLength").asString() + " characters";
    }
    if (wanted.form().isPresent()) {
      return "it is " + wanted.form().get();
    }
    return switch (wanted.get("type").asString("")) {
      case "object" -> "it is a block of keys";
      case "array" -> "it is a list" + sizes();
      case "boolean" -> "it is true or false";
      case "integer" -> wanted.meaning().orElse("it is a whole number");
      default -> text();
    };
  }

  private String sizes() {
    int least = wanted.get("minItems").asInt(0);
    int most = wanted.get("maxItems").asInt(Integer.MAX_VALUE);
    if (most == Integer.MAX_VALUE) {
      return least == 0 ? "" : " of at least " + items(least);
    }
    return " of " + (least == 0 ? "at most " : least + " to ") + items(most);
  }

  private String text() {
    if (written.isNumber()) {
      return "it is text, and a number may lose its zeros";
    }
    return wanted.meaning().orElse("it is text");
  }
}
