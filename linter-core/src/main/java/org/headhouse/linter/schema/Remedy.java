package org.headhouse.linter.schema;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.headhouse.linter.source.SpellingSuggester;
import org.headhouse.linter.yaml.CoreType;
import org.headhouse.linter.yaml.Mapping;

/**
 * Says what to write in place of a value that was refused.
 *
 * @param inFeet whether the file has most of its lengths in feet, so that they are offered first
 */
record Remedy(String keyword, ExpectedValue expected, ActualValue actual, boolean inFeet) {
  private static final int MOST_EXAMPLES = 3;

  /** Begins the comment of a number that another rule allows in a smaller range. */
  private static final String USUAL = "usual: ";

  /** An imperative clause. */
  String text() {
    return switch (keyword) {
      case "maxLength" -> "shorten it to " + expected.get("maxLength").asText() + " characters";
      case "maxItems" -> "remove the extra items";
      case "minItems" -> example().orElse("add what is missing");
      default -> forType();
    };
  }

  private String forType() {
    if (expected.has("enum")) {
      return word();
    }
    return switch (expected.get("type").asText("")) {
      case "object" -> block();
      case "array" -> list();
      case "boolean" -> truth();
      case "integer" -> wholeNumber();
      case "number" -> example().orElse("write a number");
      default -> string();
    };
  }

  private String word() {
    List<String> words = expected.words();
    String text = actual.text();
    if (!expected.wordsAreText() && words.contains(text)) {
      return "write " + text + " without quotes";
    }
    Optional<Boolean> truth = actual.truth();
    if (truth.isPresent() && words.contains("none")) {
      return truth.get()
          ? "write " + alternatives(words.stream().filter(word -> !word.equals("none")).toList())
          : "write none";
    }
    return "write "
        + SpellingSuggester.suggest(text, words)
            .filter(near -> near.length() > 1 || near.equalsIgnoreCase(text))
            .filter(near -> !expected.isUnsafeGuess(text, near))
            .orElse(alternatives(words));
  }

  private String block() {
    List<String> keys = expected.keys();
    for (String key : keys) {
      if (expected.property(key).words().contains(actual.text())) {
        return "write {" + key + ": " + actual.text() + "}";
      }
    }
    List<String> needed = expected.requiredKeys().isEmpty() ? keys : expected.requiredKeys();
    return needed.isEmpty()
        ? "write its keys under it, indented, or delete it"
        : "write its keys under it, indented: " + listed(needed);
  }

  private String list() {
    ExpectedValue item = expected.items();
    if (!item.words().isEmpty() || item.isOnly("string")) {
      String text = actual.text();
      List<String> one = item.words().contains(text) ? List.of(text) : parts(text, item);
      if (!one.isEmpty() && !actual.isNothing()) {
        return "write [" + String.join(", ", one) + "]";
      }
      return example().orElse("write a list between brackets");
    }
    return startsAnItem(item)
        ? "put a hyphen and a space before its first key, and indent the other keys to match"
        : "write each item under it, indented, with a hyphen and a space in front";
  }

  /** Whether the keys of an item stand where a list of such items is expected. */
  private boolean startsAnItem(ExpectedValue item) {
    return actual.node() instanceof Mapping mapping
        && mapping.entries().stream()
            .map(entry -> entry.key().text())
            .anyMatch(key -> item.keys().isEmpty() || item.keys().contains(key));
  }

  /** Several words in one text, where all of them are items. */
  private static List<String> parts(String text, ExpectedValue item) {
    if (item.words().isEmpty()) {
      return item.accepts(text) && !text.isEmpty() ? List.of(YamlText.text(text)) : List.of();
    }
    List<String> parts =
        Arrays.stream(text.split("[\\[\\],;/+\\s]+")).filter(part -> !part.isEmpty()).toList();
    return item.words().containsAll(parts) ? parts : List.of();
  }

  private String truth() {
    String quotes = actual.isTextByItsQuotes() ? " without quotes" : "";
    return actual.truth().map(value -> "write " + value + quotes).orElse("write true or false");
  }

  private String wholeNumber() {
    int least = expected.get("minimum").asInt(Integer.MIN_VALUE);
    int most = expected.get("maximum").asInt(Integer.MAX_VALUE);
    boolean isText = actual.is(CoreType.TEXT);
    return PlainNumber.of(actual.text())
        .filter(number -> isText && number.matches("-?[0-9]{1,9}"))
        .filter(number -> Integer.parseInt(number) >= least && Integer.parseInt(number) <= most)
        .map(number -> "write " + number + (number.equals(actual.text()) ? " without quotes" : ""))
        .orElse("write " + range(expected));
  }

  /** The whole numbers that are allowed. */
  static String range(ExpectedValue expected) {
    String usual = expected.get("$comment").asText("");
    if (usual.startsWith(USUAL)) {
      return "a whole number from " + usual.substring(USUAL.length());
    }
    String least = expected.get("minimum").asText("");
    String most = expected.get("maximum").asText("");
    if (most.isEmpty()) {
      return "a whole number" + (least.isEmpty() ? "" : " of at least " + least);
    }
    return "a whole number from " + least + " to " + most;
  }

  private String string() {
    boolean canQuote = actual.isNumber() || actual.is(CoreType.BOOLEAN);
    if (canQuote && expected.accepts(actual.text())) {
      return "write " + YamlText.quoted(actual.text()) + " in quotes";
    }
    List<String> each = QuantityRepair.withEachUnit(actual, expected);
    if (!each.isEmpty()) {
      return "write " + alternatives(inFeet ? feetFirst(each) : each);
    }
    Optional<String> meant = Repair.of(actual, expected);
    return meant.isPresent()
        ? "write " + YamlText.text(meant.get())
        : example().orElse("write a value, or delete the key");
  }

  private static List<String> feetFirst(List<String> each) {
    return each.stream().sorted(Comparator.comparing(one -> !one.endsWith(" ft"))).toList();
  }

  private Optional<String> example() {
    if (expected.isMeasured()) {
      return Optional.of("measure it, and write it as a number and a unit");
    }
    boolean isYes = actual.truth().equals(Optional.of(true));
    List<String> examples =
        expected.examples().stream()
            .filter(example -> !(isYes && example.equals("none")))
            .limit(MOST_EXAMPLES)
            .toList();
    return examples.isEmpty()
        ? Optional.empty()
        : Optional.of("write for example " + alternatives(examples));
  }

  /** {@code a, b or c}. */
  static String alternatives(List<String> words) {
    return joined(words, " or ");
  }

  /** {@code a, b and c}. */
  static String listed(List<String> words) {
    return joined(words, " and ");
  }

  private static String joined(List<String> words, String last) {
    int end = words.size() - 1;
    return end < 1
        ? String.join("", words)
        : words.stream().limit(end).collect(Collectors.joining(", ")) + last + words.get(end);
  }
}
