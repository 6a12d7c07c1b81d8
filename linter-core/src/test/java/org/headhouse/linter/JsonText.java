package org.headhouse.linter;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.List;

/** JSON in tests: what is none is a failure of the test. */
public final class JsonText {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private JsonText() {}

  /** The tree of a text. */
  public static JsonNode read(String text) {
    try {
      return MAPPER.readTree(text);
    } catch (JsonProcessingException broken) {
      throw new AssertionError("no JSON: " + text, broken);
    }
  }

  /** The keys of an object in their order. */
  public static List<String> keys(JsonNode object) {
    List<String> keys = new ArrayList<>();
    object.fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  /** A text as JSON writes it. */
  public static String quoted(String text) {
    return MAPPER.getNodeFactory().textNode(text).toString();
  }
}
