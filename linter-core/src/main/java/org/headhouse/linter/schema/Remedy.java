package org.headhouse.linter.schema;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.headhouse.linter.source.Nearest;
import org.headhouse.linter.yaml.CoreType;
import org.headhouse.linter.yaml.Mapping;

/** Says what to write in place of a value that was refused. */
record Remedy(String keyword, Wanted wanted, Written written) {
  private static final int MOST_EXAMPLES = 3;

  /** An imperative clause. */
  String text() {
    return switch (keyword) {
      case "maxLength" -> "shorten it to " + wanted.get("maxLength").asString() + " characters";
      case "maxItems" -> "take out what is too much";
      case "minItems" -> example().orElse("add what is missing");
      default -> forType();
    };
  }

  private String forType() {
    if (wanted.has("enum")) {
      return word();
    }
    return switch (wanted.get("type").asString("")) {
      case "object" -> block();
      case "array" -> list();
      case "boolean" -> truth();
      case "integer" -> wholeNumber();
      default -> string();
    };
  }

  private String word() {
    List<String> words = wanted.words();
    String text = written.text();
    if (!wanted.wordsAreText() && words.contains(text)) {
      return "write " + text + " without quotes";
    }
    Optional<Boolean> truth = written.truth();
    if (truth.isPresent() && words.contains("none")) {
      return truth.get()
          ? "write " + alternatives(words.stream().filter(word -> !word.equals("none")).toList())
          : "write none";
    }
    return "write "
        + Nearest.to(text, words)
            .filter(near -> near.length() > 1 || near.equalsIgnoreCase(text))
            .orElse(alternatives(words));
  }

  private String block() {
    List<String> keys = wanted.keys();
    for (String key : keys) {
      if (wanted.property(key).words().contains(written.text())) {
        return "write {" + key + ": " + written.text() + "}";
      }
    }
    List<String> needed = wanted.requiredKeys().isEmpty() ? keys : wanted.requiredKeys();
    return needed.isEmpty()
        ? "write its keys under it, indented, or delete it"
        : "write its keys under it, indented: " + listed(needed);
  }

  private String list() {
    Wanted item = wanted.items();
    if (!item.words().isEmpty() || item.isOnly("string")) {
      String text = written.text();
      List<String> one = item.words().contains(text) ? List.of(text) : parts(text, item);
      if (!one.isEmpty() && !written.isNothing()) {
        return "write [" + String.join(", ", one) + "]";
      }
      return example().orElse("write a list between brackets");
    }
    return startsAnItem(item)
        ? "put a hyphen and a space before its first key, and indent the other keys to match"
        : "write each item under it, indented, with a hyphen and a space in front";
  }

  /** Whether the keys of an item stand where a list of such items is wanted. */
  private boolean startsAnItem(Wanted item) {
    return written.node() instanceof Mapping mapping
        && mapping.entries().stream()
            .map(entry -> entry.key().text())
            .anyMatch(key -> item.keys().isEmpty() || item.keys().contains(key));
  }

  /** Several words in one text, where all of them are items. */
  private static List<String> parts(String text, Wanted item) {
    if (item.words().isEmpty()) {
      return item.accepts(text) && !text.isEmpty() ? List.of(YamlText.text(text)) : List.of();
    }
    List<String> parts =
        Arrays.stream(text.split("[\\[\\],;/+\\s]+")).filter(part -> !part.isEmpty()).toList();
    return item.words().containsAll(parts) ? parts : List.of();
  }

  private String truth() {
    String quotes = written.isTextByItsQuotes() ? " without quotes" : "";
    return written.truth().map(value -> "write " + value + quotes).orElse("write true or false");
  }

  private String wholeNumber() {
    int least = wanted.get("minimum").asInt(Integer.MIN_VALUE);
    int most = wanted.get("maximum").asInt(Integer.MAX_VALUE);
    boolean isText = written.is(CoreType.TEXT);
    return PlainNumber.of(written.text())
        .filter(number -> isText && number.matches("-?[0-9]{1,9}"))
        .filter(number -> Integer.parseInt(number) >= least && Integer.parseInt(number) <= most)
        .map(number -> "write " + number + (number.equals(written.text()) ? " without quotes" : ""))
        .orElse("write " + range(wanted));
  }

  /** The whole numbers that are allowed. */
  static String range(Wanted wanted) {
    String least = wanted.get("minimum").asString("");
    String most = wanted.get("maximum").asString("");
    if (most.isEmpty()) {
      return "a whole number" + (least.isEmpty() ? "" : " of at least " + least);
    }
    return "a whole number from " + least + " to " + most;
  }

  private String string() {
    boolean canQuote = written.isNumber() || written.is(CoreType.BOOLEAN);
    if (canQuote && wanted.accepts(written.text())) {
      return "write " + YamlText.quoted(written.text()) + " in quotes";
    }
    Optional<String> meant = Repair.of(written, wanted);
    return meant.isPresent()
        ? "write " + YamlText.text(meant.get())
        : example().orElse("write a value, or delete the key");
  }

  private Optional<String> example() {
    boolean isYes = written.truth().equals(Optional.of(true));
    List<String> examples =
        wanted.examples().stream()
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
