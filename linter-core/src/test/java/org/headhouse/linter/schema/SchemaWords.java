package org.headhouse.linter.schema;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.headhouse.linter.JsonText;

/** The words of a published schema: its keys, closed sets of values, and examples. */
public final class SchemaWords {
  private final Set<String> words = new TreeSet<>();

  private SchemaWords() {}

  /** The words of the schema of a kind of file. */
  public static Set<String> of(FileKind kind) {
    SchemaWords collected = new SchemaWords();
    collected.collect(JsonText.read(PublishedSchemas.text(kind)));
    return collected.words;
  }

  private void collect(JsonNode node) {
    for (Map.Entry<String, JsonNode> entry : node.properties()) {
      switch (entry.getKey()) {
        case "properties" -> entry.getValue().properties().forEach(key -> words.add(key.getKey()));
        case "enum", "examples" -> entry.getValue().forEach(this::value);
        default -> {}
      }
      collect(entry.getValue());
    }
    if (node.isArray()) {
      node.forEach(this::collect);
    }
  }

  private void value(JsonNode value) {
    if (value.isValueNode()) {
      words.add(value.asText());
    }
  }
}
