package org.headhouse.linter.check;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.headhouse.linter.bind.Bound;
import org.headhouse.linter.bind.SiteBinder;
import org.headhouse.linter.site.FoundReading;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.yaml.Document;

/** Reads readings that are given beside the file, written as under its key {@code as-found}. */
public final class ReadingsText {
  private ReadingsText() {}

  /**
   * The readings.
   *
   * @param text a list in either form of YAML, or one entry in braces
   * @throws IllegalArgumentException where it is not understood
   */
  public static List<FoundReading> readings(String text) {
    String list = text.strip().startsWith("{") ? "[" + text.strip() + "]" : text;
    String indented = list.lines().map(line -> "  " + line).collect(Collectors.joining("\n"));
    Document document =
        SourceDecoder.read(
            "the readings",
            ("as-found:\n" + indented + "\n").getBytes(StandardCharsets.UTF_8),
            Limits.DEFAULT);
    var root = document.root();
    Bound<List<FoundReading>> bound = root == null ? null : SiteBinder.readings(root);
    if (bound == null
        || bound.needsSchemaCheck()
        || !document.findings().isEmpty()
        || !bound.findings().isEmpty()) {
      throw new IllegalArgumentException(
          "the readings are not understood: enter them in the form of as-found, such as"
              + " [{at: Propagation, pair-resistance: 118 ohm}]");
    }
    return bound.model();
  }
}
