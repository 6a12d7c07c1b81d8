package org.headhouse.linter.schema;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.headhouse.linter.result.Message;

/** Says of keys that they are not known, or missing. */
final class KeyWords {
  private static final int FEW = 4;
  private static final int LONG = 40;

  private KeyWords() {}

  /**
   * @param free whether a key that is known could stand here, since it does not yet
   */
  static Message unknown(String key, List<String> known, Predicate<String> free, MeantKeys meant) {
    String remedy =
        spaceless(key, known)
            .filter(free)
            .map(near -> "write " + near + ": " + key.substring(near.length() + 1).strip())
            .or(
                () ->
                    meant.of(key, known).filter(free).map(near -> "write " + YamlText.quoted(near)))
            .orElse("delete it, or write one of " + String.join(", ", known));
    return new Message(
        "unknown key " + ActualValue.shortened(key), "its value is not read", remedy);
  }

  /** A known key whose colon lacks the space behind it, which makes one word of key and value. */
  private static Optional<String> spaceless(String key, List<String> known) {
    int colon = key.indexOf(':');
    return colon < 0
        ? Optional.empty()
        : Optional.of(key.substring(0, colon)).filter(known::contains);
  }

  /**
   * @param called what the block that lacks the key is called
   */
  static Message missing(String key, String called, ExpectedValue expected) {
    return new Message(
        called + " lacks the key " + YamlText.quoted(key),
        expected.meaning().orElse("the definition is incomplete"),
        "add " + YamlText.quoted(key) + with(key, expected));
  }

  private static String with(String key, ExpectedValue expected) {
    List<String> words = expected.words();
    if (!words.isEmpty() && words.size() <= FEW) {
      return ": " + Remedy.alternatives(words);
    }
    return switch (expected.get("type").asText("")) {
      case "boolean" -> ": true or false";
      case "integer" -> ", " + Remedy.range(expected);
      case "object" -> " with " + Remedy.listed(expected.requiredKeys());
      default ->
          expected.examples().stream()
              .filter(one -> one.length() < LONG)
              .findFirst()
              .map(one -> example(key, one))
              .orElse("");
    };
  }

  private static String example(String key, String value) {
    return ", for example " + key + ": " + value;
  }

  /** What to start a file with that holds nothing. */
  static String start(ExpectedValue root) {
    return "start with "
        + Remedy.listed(
            root.requiredKeys().stream()
                .limit(2)
                .map(key -> start(key, root.property(key)))
                .toList());
  }

  private static String start(String key, ExpectedValue expected) {
    if (expected.isOnly("array")) {
      return key;
    }
    return key + ": " + (expected.isOnly("string") ? "<name>" : expected.examples().get(0));
  }
}
