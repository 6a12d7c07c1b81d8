package org.headhouse.linter.schema;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.headhouse.linter.yaml.CoreType;
import org.headhouse.linter.yaml.Yaml11Interpretation;

/** Writes values as a definition has them, for remedies that can be copied. */
final class YamlText {
  private YamlText() {}

  /** A scalar, or a list of scalars between brackets; empty for anything else. */
  static Optional<String> of(JsonNode value) {
    if (value.isArray()) {
      List<String> items = new ArrayList<>();
      for (JsonNode item : value) {
        if (item.isContainerNode()) {
          return Optional.empty();
        }
        items.add(scalar(item));
      }
      return Optional.of("[" + String.join(", ", items) + "]");
    }
    return value.isContainerNode() ? Optional.empty() : Optional.of(scalar(value));
  }

  private static String scalar(JsonNode value) {
    return value.isTextual() ? text(value.asText()) : value.toString();
  }

  /** Text, in quotes where it would be taken for something else without them. */
  static String text(String text) {
    boolean other =
        CoreType.of(text) != CoreType.TEXT
            || (Yaml11Interpretation.of(text).isPresent() && !Yaml11Interpretation.isDate(text));
    return other ? quoted(text) : text;
  }

  /** Text between double quotes. */
  static String quoted(String text) {
    return "\"" + text + "\"";
  }
}
