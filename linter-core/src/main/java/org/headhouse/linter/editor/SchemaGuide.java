package org.headhouse.linter.editor;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.headhouse.linter.schema.FileKind;
import org.headhouse.linter.schema.PublishedSchemas;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.jspecify.annotations.Nullable;

/** What the published schema of a file says of one place in it. */
final class SchemaGuide {
  private static final String NONE_TOO = "^(?:none|";

  private final JsonObject root;

  private SchemaGuide(FileKind kind) {
    this.root = JsonParser.parseString(PublishedSchemas.text(kind)).getAsJsonObject();
  }

  /** The guide to a text, or null to one that has no schema. */
  static @Nullable SchemaGuide of(OpenText.Role role) {
    return switch (role) {
      case SITE -> new SchemaGuide(FileKind.SITE);
      case POLICY -> new SchemaGuide(FileKind.POLICY);
      case DEVICE_TYPES -> new SchemaGuide(FileKind.DEVICE_TYPES);
      case OTHER -> null;
    };
  }

  /** Title and description of what a way leads to, or null where there are none. */
  @Nullable String meaning(YamlPath path) {
    for (JsonObject schema : schemas(path)) {
      JsonObject known = schema;
      for (int hops = 0; known != null && hops < 8; hops++) {
        if (known.has("description")) {
          String title = known.has("title") ? "**" + known.get("title").getAsString() + "**: " : "";
          return title + known.get("description").getAsString();
        }
        known = known.has("$ref") ? target(known.get("$ref").getAsString()) : null;
      }
    }
    return null;
  }

  /** The keys that a mapping may have at the end of a way without its last step. */
  Map<String, JsonObject> keys(YamlPath path) {
    Map<String, JsonObject> keys = new LinkedHashMap<>();
    Node.Valued parent = path.parents().get(path.parents().size() - 1);
    for (JsonObject schema : schemas(path, path.steps().size() - 1)) {
      for (JsonObject part : parts(schema, parent, true)) {
        properties(part)
            .entrySet()
            .forEach(one -> keys.putIfAbsent(one.getKey(), one.getValue().getAsJsonObject()));
      }
    }
    return keys;
  }

  /** The words that a value may be at the end of a way; quantities are left to people. */
  Set<String> words(YamlPath path) {
    Set<String> words = new TreeSet<>();
    for (JsonObject schema : schemas(path)) {
      for (JsonObject part : parts(schema, null, true)) {
        if (part.has("enum")) {
          part.getAsJsonArray("enum").forEach(one -> words.add(one.getAsString()));
        }
        if (part.has("type") && part.get("type").toString().equals("\"boolean\"")) {
          words.addAll(List.of("true", "false"));
        }
        if (part.has("pattern") && part.get("pattern").getAsString().startsWith(NONE_TOO)) {
          words.add("none");
        }
      }
    }
    return words;
  }

  private List<JsonObject> schemas(YamlPath path) {
    return schemas(path, path.steps().size());
  }

  private List<JsonObject> schemas(YamlPath path, int steps) {
    List<JsonObject> found = List.of(root);
    for (int index = 0; index < steps; index++) {
      String step = path.steps().get(index);
      Node.Valued parent = path.parents().get(index);
      List<JsonObject> next = new ArrayList<>();
      for (JsonObject schema : found) {
        for (JsonObject part : parts(schema, parent, false)) {
          JsonElement inner =
              YamlPath.isItem(step)
                  ? part.get("items")
                  : properties(part).has(step)
                      ? properties(part).get(step)
                      : part.get("additionalProperties");
          if (inner != null && inner.isJsonObject()) {
            next.add(inner.getAsJsonObject());
          }
        }
      }
      found = next;
    }
    return found;
  }

  private static JsonObject properties(JsonObject schema) {
    JsonElement properties = schema.get("properties");
    return properties == null ? new JsonObject() : properties.getAsJsonObject();
  }

  /**
   * A schema with what it refers to, as far as it is about a node.
   *
   * @param node or null for a value that is only being written
   * @param open whether keys that decide what the node is may still come
   */
  private List<JsonObject> parts(JsonObject schema, Node.@Nullable Valued node, boolean open) {
    List<JsonObject> parts = new ArrayList<>();
    collect(schema, node, open, parts);
    return parts;
  }

  private void collect(
      JsonObject schema, Node.@Nullable Valued node, boolean open, List<JsonObject> parts) {
    parts.add(schema);
    if (schema.has("$ref")) {
      collect(target(schema.get("$ref").getAsString()), node, open, parts);
    }
    if (schema.has("if")) {
      JsonObject condition = schema.getAsJsonObject("if");
      boolean isMet = isMet(condition, node);
      if (schema.has("then") && (isMet || (open && node == null))) {
        collect(schema.getAsJsonObject("then"), node, open, parts);
      }
      if (schema.has("else") && (!isMet || node == null)) {
        collect(schema.getAsJsonObject("else"), node, open, parts);
      }
      if (schema.has("then") && !isMet && open && isAlmostEmpty(node)) {
        parts.add(deciding(condition, schema.getAsJsonObject("then")));
      }
    }
  }

  private static boolean isMet(JsonObject condition, Node.@Nullable Valued node) {
    if (condition.has("type")
        && condition.get("type").toString().equals("\"object\"")
        && !(node instanceof Mapping)) {
      return false;
    }
    if (condition.has("required")) {
      for (JsonElement key : condition.getAsJsonArray("required")) {
        if (!(node instanceof Mapping mapping) || !hasKey(mapping, key.getAsString())) {
          return false;
        }
      }
    }
    return !condition.has("not")
        && (node instanceof Mapping
            || !condition.has("type")
            || !condition.get("type").toString().equals("\"object\""));
  }

  /** Whether only the key at the cursor is there. */
  private static boolean isAlmostEmpty(Node.@Nullable Valued node) {
    return node instanceof Mapping mapping && mapping.entries().size() <= 1;
  }

  /** The keys alone that make a mapping what a branch is about. */
  private JsonObject deciding(JsonObject condition, JsonObject branch) {
    JsonObject properties = new JsonObject();
    if (condition.has("required")) {
      for (JsonElement key : condition.getAsJsonArray("required")) {
        for (JsonObject part : parts(branch, null, false)) {
          if (properties(part).has(key.getAsString())) {
            properties.add(key.getAsString(), properties(part).get(key.getAsString()));
          }
        }
      }
    }
    JsonObject deciding = new JsonObject();
    deciding.add("properties", properties);
    return deciding;
  }

  private static boolean hasKey(Mapping mapping, String key) {
    return mapping.entries().stream().anyMatch(one -> one.key().text().equals(key));
  }

  private JsonObject target(String reference) {
    JsonObject found = root;
    for (String step : reference.substring(2).split("/", -1)) {
      found = found.getAsJsonObject(step);
    }
    return found;
  }
}
