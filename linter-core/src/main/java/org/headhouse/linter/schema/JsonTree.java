package org.headhouse.linter.schema;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.headhouse.linter.yaml.CoreType;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;

/** Writes a located tree out as the JSON that it means, aliases followed. */
final class JsonTree {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  /** More characters than this make no number of a definition, and could take long to read. */
  private static final int LONGEST_NUMBER = 12;

  /** Replaces any number beyond all limits; the message quotes the file, not this. */
  private static final long BEYOND = 999_999_999_999L;

  private static final double NEVER_ALLOWED = -0.5;

  private JsonTree() {}

  static JsonNode of(Cursor cursor) {
    if (cursor.node() instanceof Mapping mapping) {
      ObjectNode object = JSON.objectNode();
      for (Mapping.Entry entry : mapping.entries()) {
        object.set(entry.key().text(), of(cursor.valueOf(entry)));
      }
      return object;
    }
    if (cursor.node() instanceof Sequence sequence) {
      ArrayNode array = JSON.arrayNode(sequence.items().size());
      sequence.items().forEach(item -> array.add(of(cursor.inside(item))));
      return array;
    }
    return scalar((Scalar) cursor.node());
  }

  private static JsonNode scalar(Scalar scalar) {
    String text = scalar.text();
    CoreType type = scalar.type();
    return switch (type) {
      case NULL -> JSON.nullNode();
      case BOOLEAN -> JSON.booleanNode(text.toLowerCase(Locale.ROOT).equals("true"));
      case TEXT -> JSON.textNode(text);
      case INTEGER -> integer(text);
      case FLOAT -> number(text);
    };
  }

  private static JsonNode integer(String text) {
    if (text.length() > LONGEST_NUMBER) {
      return JSON.numberNode(text.startsWith("-") ? -BEYOND : BEYOND);
    }
    if (text.startsWith("0o")) {
      return JSON.numberNode(Long.parseLong(text.substring(2), 8));
    }
    if (text.startsWith("0x")) {
      return JSON.numberNode(Long.parseLong(text.substring(2), 16));
    }
    return JSON.numberNode(Long.parseLong(text));
  }

  /**
   * JSON Schema takes 2.0 for a whole number; its library fails on whole numbers like 1e20. What is
   * no number of a definition becomes one that no key allows.
   */
  private static JsonNode number(String text) {
    String plain = text.toLowerCase(Locale.ROOT);
    if (plain.endsWith("inf") || plain.endsWith("nan") || text.length() > LONGEST_NUMBER) {
      return JSON.numberNode(NEVER_ALLOWED);
    }
    double value = Double.parseDouble(text);
    if (value != Math.rint(value)) {
      return JSON.numberNode(value);
    }
    return JSON.numberNode(Math.max(-BEYOND, Math.min(BEYOND, (long) value)));
  }
}
