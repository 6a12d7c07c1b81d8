package org.headhouse.linter.schema;

import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Sequence;

/**
 * Says what is wrong with a value and what it should have been.
 *
 * @param keyword the keyword of the schema that refused the value
 */
record ValueWords(String keyword, ExpectedValue expected, ActualValue actual) {

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
    String pattern = expected.get("pattern").asText("");
    return pattern.contains(" *") || pattern.contains("(?:/");
  }

  /** What is written, as the rest of a sentence that starts with the value's name. */
  String fact() {
    if (actual.isNothing()) {
      return "has no value";
    }
    return switch (keyword) {
      case "type" ->
          actual.isNumber() && expected.get("pattern").asText("").contains(" *")
              ? "has no unit after " + actual.text()
              : "is " + actual.shownWithKind();
      case "minLength" -> "is empty";
      case "maxLength" ->
          "has " + actual.text().codePointCount(0, actual.text().length()) + " characters";
      case "minItems", "maxItems" -> "has " + items(size(actual.node()));
      default -> "cannot be " + actual.shown();
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

  /** One clause: what is expected. */
  String expectation() {
    if (expected.has("enum")) {
      return "it must be " + Remedy.alternatives(expected.words());
    }
    if (keyword.equals("maxLength")) {
      return "it must be text of at most " + expected.get("maxLength").asText() + " characters";
    }
    if (expected.form().isPresent()) {
      return "it must be " + expected.form().get();
    }
    return switch (expected.get("type").asText("")) {
      case "object" -> "it must be a mapping of keys to values";
      case "array" -> "it must be a list" + sizes();
      case "boolean" -> "it must be true or false";
      case "integer" -> expected.meaning().orElse("it must be a whole number");
      case "number" -> "it must be a number" + limits();
      default -> text();
    };
  }

  private String limits() {
    String above = expected.get("exclusiveMinimum").asText("");
    String most = expected.get("maximum").asText("");
    return (above.isEmpty() ? "" : " above " + above) + (most.isEmpty() ? "" : ", at most " + most);
  }

  private String sizes() {
    int least = expected.get("minItems").asInt(0);
    int most = expected.get("maxItems").asInt(Integer.MAX_VALUE);
    if (most == Integer.MAX_VALUE) {
      return least == 0 ? "" : " of at least " + items(least);
    }
    return " of " + (least == 0 ? "at most " : least + " to ") + items(most);
  }

  private String text() {
    if (actual.isNumber()) {
      return "it must be text, since a number may lose its zeros";
    }
    return expected.meaning().orElse("it must be text");
  }
}
