package org.headhouse.linter.baseline;

import java.util.HashMap;
import java.util.Map;

/** Makes equal texts one object: the lines of a baseline have few sites and rules between them. */
final class SharedTexts {
  private final Map<String, String> known = new HashMap<>();

  String of(String text) {
    String same = known.putIfAbsent(text, text);
    return same == null ? text : same;
  }
}
