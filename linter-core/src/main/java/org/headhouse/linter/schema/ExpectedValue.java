package org.headhouse.linter.schema;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.networknt.schema.path.NodePath;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the schema says of one value.
 *
 * @param schema the whole schema, for references
 * @param layers the parts that hold for the value: that of its key first, then what it refers to
 * @param ownKey whether the schema knows the value's key; examples of another key would mislead
 */
record ExpectedValue(JsonNode schema, List<JsonNode> layers, boolean ownKey) {
  /** Begins the comment of words that nobody is to get by a guess. */
  private static final String UNSAFE = "unsafe: ";

  private static final Set<String> ARTICLES = Set.of("the", "a", "an");

  private static final Pattern END_OF_CLAUSE = Pattern.compile("[.:;](?=\\s|$)");
  private static final List<String> TELLING =
      List.of("the", "a", "an", "how", "what", "where", "whether", "which", "why");

  static ExpectedValue root(JsonNode schema) {
    return at(schema, schema, true);
  }

  /** Follows the way that led to an error; the last step of the way is the keyword that failed. */
  static ExpectedValue of(NodePath way, JsonNode schema) {
    ExpectedValue here = root(schema);
    for (int i = 0; i < way.getNameCount() - 1; i++) {
      String step = way.getElement(i).toString();
      here =
          switch (step) {
            case "properties" -> here.property(way.getElement(++i).toString());
            case "items" -> here.items();
            case "additionalProperties" -> at(here.get(step), schema, false);
            case "then", "else" -> here.with(step);
            default -> here; // references are followed as they are met
          };
    }
    return here;
  }

  private static ExpectedValue at(JsonNode part, JsonNode schema, boolean ownKey) {
    List<JsonNode> layers = new ArrayList<>();
    JsonNode next = part;
    while (!next.isMissingNode()) {
      layers.add(next);
      String reference = next.path("$ref").asText("");
      next = reference.isEmpty() ? next.path("$ref") : schema.at(reference.substring(1));
    }
    return new ExpectedValue(schema, layers, ownKey);
  }

  private ExpectedValue with(String branch) {
    List<JsonNode> all = new ArrayList<>(layers);
    // Of branches inside branches, the innermost is the one that was met last.
    for (int i = layers.size() - 1; i >= 0; i--) {
      if (layers.get(i).has(branch)) {
        all.addAll(at(layers.get(i).path(branch), schema, ownKey).layers);
        break;
      }
    }
    return new ExpectedValue(schema, all, ownKey);
  }

  ExpectedValue property(String key) {
    return at(get("properties").path(key), schema, true);
  }

  ExpectedValue items() {
    return at(get("items"), schema, ownKey);
  }

  /** A member of the nearest layer that has it. */
  JsonNode get(String member) {
    for (JsonNode layer : layers) {
      if (layer.has(member)) {
        return layer.path(member);
      }
    }
    return MissingNode.getInstance();
  }

  boolean has(String member) {
    return !get(member).isMissingNode();
  }

  /** Whether the value is of this type and no other. */
  boolean isOnly(String type) {
    return get("type").asText("").equals(type);
  }

  /** The keys that the value may have, in the order of the schema; none where it takes others. */
  List<String> keys() {
    List<String> keys = new ArrayList<>();
    if (get("additionalProperties").isObject()) {
      return keys;
    }
    get("properties").fieldNames().forEachRemaining(keys::add);
    return List.copyOf(keys);
  }

  List<String> requiredKeys() {
    return texts("required");
  }

  /** The values that are allowed, as they are written in YAML; none where the set is not closed. */
  List<String> words() {
    return texts("enum");
  }

  private List<String> texts(String member) {
    List<String> texts = new ArrayList<>();
    get(member).forEach(text -> texts.add(text.asText()));
    return texts;
  }

  /**
   * Whether a text is taken for a word by its spelling alone that leaves vents open, or a fault
   * unseen, where the guess is wrong. Capitals and spaces are no guess.
   */
  boolean isUnsafeGuess(String text, String word) {
    String comment = get("$comment").asText("");
    String plain = text.strip().replace('_', '-').replace(' ', '-');
    return comment.startsWith(UNSAFE)
        && List.of(comment.substring(UNSAFE.length()).split(", ")).contains(word)
        && !plain.equalsIgnoreCase(word);
  }

  /** Whether the allowed values are text. */
  boolean wordsAreText() {
    return get("enum").path(0).isTextual();
  }

  /** Examples as they are written in YAML; blocks of keys are too long for a sentence. */
  List<String> examples() {
    List<String> examples = new ArrayList<>();
    if (ownKey) {
      get("examples").forEach(example -> YamlText.of(example).ifPresent(examples::add));
    }
    return examples;
  }

  /**
   * Whether somebody has to measure the value: an example would be a plausible number, which proves
   * nothing once it is copied.
   */
  boolean isMeasured() {
    return get("$comment").asText("").equals("measured");
  }

  /** What the form of the value is, from the part that has its pattern; empty where it has none. */
  Optional<String> form() {
    return layers.stream()
        .filter(layer -> layer.has("pattern") || layer.path("type").isArray())
        .map(layer -> layer.path("description").asText(""))
        .filter(text -> !text.isEmpty())
        .map(text -> lowerFirst(text.endsWith(".") ? text.substring(0, text.length() - 1) : text))
        .findFirst();
  }

  /** The meaning of the value, as a clause; empty where the schema has no fitting sentence. */
  Optional<String> meaning() {
    String description = get("description").asText("");
    Matcher end = END_OF_CLAUSE.matcher(description);
    String clause = lowerFirst(end.find() ? description.substring(0, end.start()) : description);
    String first = clause.substring(0, Math.max(0, clause.indexOf(' ')));
    return TELLING.contains(first)
        ? Optional.of((ARTICLES.contains(first) ? "it is " : "it says ") + clause)
        : Optional.empty();
  }

  /** Whether a text would be accepted. */
  boolean accepts(String text) {
    int length = text.codePointCount(0, text.length());
    return length >= get("minLength").asInt(0)
        && length <= get("maxLength").asInt(Integer.MAX_VALUE)
        && (!has("pattern") || Pattern.compile(get("pattern").asText()).matcher(text).find());
  }

  private static String lowerFirst(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
  }
}
