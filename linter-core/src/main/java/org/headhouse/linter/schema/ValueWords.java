package org.headhouse.linter.schema;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.headhouse.linter.source.Nearest;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Says what a value should have been, from the part of the schema that refused it. */
final class ValueWords {
  private final JsonNode rules;

  ValueWords(JsonNode rules) {
    this.rules = rules;
  }

  /** The rule that a failed keyword belongs to. */
  String rule(String keyword) {
    return switch (keyword) {
      case "type" -> isQuantity() ? "schema.bad-quantity" : "schema.wrong-type";
      case "pattern" -> isQuantity() ? "schema.bad-quantity" : "schema.bad-value";
      case "enum", "const" -> "schema.bad-value";
      default -> "schema.out-of-range";
    };
  }

  /** A quantity is text that must match a pattern with units in it. */
  private boolean isQuantity() {
    String pattern = rules.path("pattern").asString("");
    return pattern.contains(" *(?:") || pattern.contains(" *ns") || pattern.contains("(?:/");
  }

  String fact(String keyword, String quoted) {
    return switch (keyword) {
      case "type" -> "is " + quoted;
      case "maxLength" -> "is too long";
      case "maxItems", "minItems" -> "has the wrong number of items";
      default -> "cannot be " + quoted;
    };
  }

  /** One clause: what is wanted. */
  String expectation() {
    if (rules.has("enum")) {
      return "it is one of " + String.join(", ", words());
    }
    if (isQuantity()) {
      String described = rules.path("description").asString("");
      return "it is a quantity with its unit, written as "
          + lowerFirst(described.endsWith(".") ? cut(described) : described);
    }
    if (rules.has("minimum")) {
      return "it is a whole number from "
          + rules.path("minimum").asString()
          + " to "
          + rules.path("maximum").asString();
    }
    if (rules.has("minItems") || rules.has("maxItems")) {
      return "it is a list of "
          + rules.path("minItems").asInt(0)
          + " to "
          + rules.path("maxItems").asString()
          + " items";
    }
    if (rules.path("pattern").asString("").startsWith("^[a-z0-9]+(?:-")) {
      return "it is lower-case letters and digits with single hyphens between";
    }
    if (rules.has("maxLength")) {
      return "it is text of at most " + rules.path("maxLength").asString() + " characters";
    }
    return switch (rules.path("type").asString("")) {
      case "object" -> "it is a block of keys";
      case "array" -> "it is a list";
      case "boolean" -> "it is true or false";
      case "integer" -> "it is a whole number";
      default -> "it is text";
    };
  }

  String remedy(@Nullable String written) {
    if (written != null && rules.has("enum")) {
      return Nearest.to(written, words())
          .map(near -> "write " + near)
          .orElse("write " + alternatives(words()));
    }
    List<String> examples = new ArrayList<>();
    rules.path("examples").forEach(example -> examples.add(shown(example)));
    if (!examples.isEmpty()) {
      return "write for example " + alternatives(examples);
    }
    if (rules.path("type").asString("").equals("boolean")) {
      return "write true or false";
    }
    return rules.path("type").asString("").equals("string")
        ? "put it in quotes if it is meant as text"
        : "write what is wanted";
  }

  private static String shown(JsonNode example) {
    return example.isString() ? example.asString() : example.toString();
  }

  private List<String> words() {
    List<String> words = new ArrayList<>();
    rules.path("enum").forEach(word -> words.add(word.asString()));
    return words;
  }

  private static String alternatives(List<String> words) {
    return words.stream().collect(Collectors.joining(" or "));
  }

  private static String lowerFirst(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
  }

  private static String cut(String sentence) {
    return sentence.substring(0, sentence.length() - 1);
  }
}
