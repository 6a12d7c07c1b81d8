package org.headhouse.linter.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.yaml.CoreType;
import org.headhouse.linter.yaml.Document;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.OlderReading;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.jspecify.annotations.Nullable;

/** Tells of values that YAML 1.1 readers take for something else. */
final class AmbiguousScalars {
  private static final Set<String> DATE_KEYS = Set.of("date", "until");

  private AmbiguousScalars() {}

  /**
   * Adds what is to be told of a document to what the schema found in it. Where both speak of one
   * value, the quotes are what is missing, so only this is told.
   */
  static List<Finding> addTo(List<Finding> schemaFindings, Document document) {
    if (document.ambiguous().isEmpty()) {
      return schemaFindings;
    }
    List<Finding> findings = new ArrayList<>();
    Set<Region> told =
        document.ambiguous().stream()
            .filter(scalar -> !isDate(scalar, document))
            .map(Scalar::region)
            .collect(Collectors.toSet());
    Map<Region, Finding> replaced = new HashMap<>();
    for (Finding finding : schemaFindings) {
      if (told.contains(finding.place().region())) {
        replaced.put(finding.place().region(), finding);
      } else {
        findings.add(finding);
      }
    }
    Set<Region> unread =
        schemaFindings.stream()
            .filter(finding -> finding.rule().equals("schema.unknown-key"))
            .map(finding -> finding.place().region())
            .collect(Collectors.toSet());
    for (Scalar scalar : document.ambiguous()) {
      if (told.contains(scalar.region())) {
        boolean isRead = unread.isEmpty() || !isUnder(unread, document.root(), scalar.region());
        Finding refused = replaced.get(scalar.region());
        findings.add(
            isRead
                ? finding(scalar).fixedBy(refused == null ? asRead(scalar) : refused.fix())
                : finding(scalar).at(Level.WARNING));
      }
    }
    return findings;
  }

  /** Whether one of some keys leads to a value. */
  private static boolean isUnder(Set<Region> keys, @Nullable Node node, Region value) {
    if (node instanceof Mapping mapping) {
      return mapping.entries().stream()
          .filter(entry -> entry.value().region().contains(value))
          .anyMatch(
              entry -> keys.contains(entry.key().region()) || isUnder(keys, entry.value(), value));
    }
    return node instanceof Sequence sequence
        && sequence.items().stream()
            .filter(item -> item.region().contains(value))
            .anyMatch(item -> isUnder(keys, item, value));
  }

  private static boolean isDate(Scalar scalar, Document document) {
    if (!OlderReading.isDate(scalar.text())) {
      return false;
    }
    String path = LogicalPath.of(document.root(), scalar.region()).text();
    return DATE_KEYS.contains(path.substring(path.lastIndexOf('/') + 1));
  }

  /** The value that is read, written so that every reader reads it. */
  private static @Nullable FixDraft asRead(Scalar scalar) {
    String text = scalar.text();
    Place place = Place.at(scalar.region());
    if (scalar.type() == CoreType.TEXT) {
      return FixDraft.inFile("Put quotes around " + text, Edit.quote(place, text));
    }
    if (scalar.type() != CoreType.INTEGER || text.length() > 18) {
      return null;
    }
    long number =
        text.startsWith("0o") ? Long.parseLong(text, 2, text.length(), 8) : Long.parseLong(text);
    return FixDraft.inFile("Write " + number, Edit.plain(place, number));
  }

  private static Finding finding(Scalar scalar) {
    String other = OlderReading.of(scalar.text()).orElse("something else");
    return Finding.of(
        "yaml.ambiguous-scalar",
        scalar.region(),
        new Message(
            "\"" + scalar.text() + "\" stands without quotes",
            "readers of YAML 1.1 take it for " + other,
            "write \""
                + scalar.text()
                + "\" in quotes if it is text, or the plain decimal number"));
  }
}
