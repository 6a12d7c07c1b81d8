package org.headhouse.linter.baseline;

import java.io.StringWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;

/**
 * A JSON object of texts and whole numbers on one line. An object mapper takes a fifth of a second
 * to start, which is longer than the check of a site.
 */
final class JsonLine {
  private static final JsonFactory JSON =
      JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

  private static final Object SOMETHING_ELSE = new Object();

  private JsonLine() {}

  /** The text of an object of {@link String}s and {@link Integer}s. */
  static String of(Map<String, Object> values) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = JSON.createGenerator(ObjectWriteContext.empty(), text)) {
      json.writeStartObject();
      values.forEach(
          (key, value) -> {
            if (value instanceof Integer number) {
              json.writeNumberProperty(key, number);
            } else {
              json.writeStringProperty(key, (String) value);
            }
          });
      json.writeEndObject();
    }
    return text.toString();
  }

  /**
   * The values of an object in their order: a {@link String}, a whole {@link Number} or null, and
   * some other object for anything else.
   *
   * @return empty where the line is not one JSON object, has a key twice, or is over the limits of
   *     the parser
   */
  static Optional<Map<String, @Nullable Object>> read(String line) {
    try (JsonParser json = JSON.createParser(ObjectReadContext.empty(), line)) {
      if (json.nextToken() != JsonToken.START_OBJECT) {
        return Optional.empty();
      }
      Map<String, @Nullable Object> values = new LinkedHashMap<>();
      for (String key = json.nextName(); key != null; key = json.nextName()) {
        json.nextToken();
        values.put(key, value(json));
      }
      return json.nextToken() == null ? Optional.of(values) : Optional.empty();
    } catch (JacksonException noJson) {
      return Optional.empty();
    }
  }

  private static @Nullable Object value(JsonParser json) {
    return switch (json.currentToken()) {
      case VALUE_NULL -> null;
      case VALUE_STRING -> json.getString();
      case VALUE_NUMBER_INT -> json.getNumberValue();
      default -> {
        json.skipChildren();
        yield SOMETHING_ELSE;
      }
    };
  }
}
