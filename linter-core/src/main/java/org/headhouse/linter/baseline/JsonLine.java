package org.headhouse.linter.baseline;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

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
    try (JsonGenerator json = JSON.createGenerator(text)) {
      json.writeStartObject();
      for (Map.Entry<String, Object> entry : values.entrySet()) {
        if (entry.getValue() instanceof Integer number) {
          json.writeNumberField(entry.getKey(), number);
        } else {
          json.writeStringField(entry.getKey(), (String) entry.getValue());
        }
      }
      json.writeEndObject();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
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
    try (JsonParser json = JSON.createParser(line)) {
      if (json.nextToken() != JsonToken.START_OBJECT) {
        return Optional.empty();
      }
      Map<String, @Nullable Object> values = new LinkedHashMap<>();
      for (String key = json.nextFieldName(); key != null; key = json.nextFieldName()) {
        json.nextToken();
        values.put(key, value(json));
      }
      return json.nextToken() == null ? Optional.of(values) : Optional.empty();
    } catch (JacksonException noJson) {
      return Optional.empty();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  private static @Nullable Object value(JsonParser json) throws IOException {
    return switch (json.currentToken()) {
      case VALUE_NULL -> null;
      case VALUE_STRING -> json.getText();
      case VALUE_NUMBER_INT -> json.getNumberValue();
      default -> {
        json.skipChildren();
        yield SOMETHING_ELSE;
      }
    };
  }
}
