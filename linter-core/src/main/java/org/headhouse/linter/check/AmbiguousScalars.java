package org.headhouse.linter.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.schema.PlainNumber;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.yaml.CoreType;
import org.headhouse.linter.yaml.Document;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.headhouse.linter.yaml.Yaml11Interpretation;
import org.jspecify.annotations.Nullable;

/** Reports values that YAML 1.1 readers take for something else. */
final class AmbiguousScalars {
  private static final String NUMBER = "the number ";
  private static final Set<String> DATE_KEYS = Set.of("date", "until", "calibrated-until");

  /** What the schema says of values, by the place where they are written. */
  private final Map<Region, Finding> refused = new HashMap<>();

  private final Set<Region> unknownKeys = new HashSet<>();
  private final Set<Region> ambiguous = new HashSet<>();
  private final Map<Region, Finding> findings = new HashMap<>();

  private AmbiguousScalars(List<Finding> schemaFindings, Document document) {
    document.ambiguous().forEach(scalar -> ambiguous.add(scalar.region()));
    for (Finding finding : schemaFindings) {
      if (finding.rule().equals("schema.unknown-key")) {
        unknownKeys.add(finding.place().region());
      } else {
        refused.put(written(finding), finding);
      }
    }
    visit(document.root(), "", true);
  }

  /**
   * Adds the ambiguous values of a document to what the schema found in it. A value that both find
   * is reported once, as ambiguous and with the remedy of the schema.
   */
  static List<Finding> addTo(List<Finding> schemaFindings, Document document) {
    if (document.ambiguous().isEmpty()) {
      return schemaFindings;
    }
    Map<Region, Finding> reported = new AmbiguousScalars(schemaFindings, document).findings;
    List<Finding> all = new ArrayList<>();
    for (Finding finding : schemaFindings) {
      if (!reported.containsKey(written(finding))) {
        all.add(finding);
      }
    }
    for (Scalar scalar : document.ambiguous()) {
      Finding finding = reported.get(scalar.region());
      if (finding != null) {
        all.add(finding);
      }
    }
    return all;
  }

  private static Region written(Finding finding) {
    Place.Anchored anchored = finding.place().anchored();
    return anchored == null ? finding.place().region() : anchored.value();
  }

  /**
   * Looks at all values. The value of a repeated key is not in the tree: the key is reported.
   *
   * @param key the key of the node; empty for an item of a list
   * @param isRead whether every key on the way is known
   */
  private void visit(@Nullable Node node, String key, boolean isRead) {
    if (node instanceof Mapping mapping) {
      for (Mapping.Entry entry : mapping.entries()) {
        if (entry.via() == null) {
          boolean known = !unknownKeys.contains(entry.key().region());
          visit(entry.value(), entry.key().text(), isRead && known);
        }
      }
    } else if (node instanceof Sequence sequence) {
      sequence.items().forEach(item -> visit(item, "", isRead));
    } else if (node instanceof Scalar scalar && ambiguous.contains(scalar.region())) {
      boolean isDate = DATE_KEYS.contains(key) && Yaml11Interpretation.isDate(scalar.text());
      if (!isDate) {
        findings.put(scalar.region(), isRead ? finding(scalar) : unread(scalar));
      }
    }
  }

  private static Finding unread(Scalar scalar) {
    String remedy = "write \"" + scalar.text() + "\" in quotes if it is text";
    return finding(scalar, remedy).at(Level.WARNING);
  }

  private Finding finding(Scalar scalar) {
    Finding schema = refused.get(scalar.region());
    if (schema != null) {
      return finding(scalar, schema.message().remedy()).fixedBy(schema.fix());
    }
    return finding(
            scalar,
            scalar.type() == CoreType.TEXT
                ? "write \"" + scalar.text() + "\" in quotes"
                : "write " + PlainNumber.of(scalar.text()).orElse("the plain decimal number"))
        .fixedBy(asRead(scalar));
  }

  /** The value that is read, written so that every reader reads it. */
  private static @Nullable FixDraft asRead(Scalar scalar) {
    Place place = Place.at(scalar.region());
    if (scalar.type() == CoreType.TEXT) {
      return FixDraft.inFile(
          "Put quotes around " + scalar.text(), Edit.quote(place, scalar.text()));
    }
    return PlainNumber.of(scalar.text())
        .map(number -> plain(scalar.text(), number, Edit.plain(place, number)))
        .orElse(null);
  }

  /** Where readers see two numbers, the other one may be what is set on site. */
  private static FixDraft plain(String text, String number, Edit edit) {
    String description = "Write " + number;
    return older(text).startsWith(NUMBER) && !isSameNumber(text, number)
        ? FixDraft.proposed(description, edit)
        : FixDraft.inFile(description, edit);
  }

  private static boolean isSameNumber(String text, String number) {
    return older(text).equals(NUMBER + number);
  }

  private static String older(String text) {
    return Yaml11Interpretation.of(text).orElse("something else");
  }

  private static Finding finding(Scalar scalar, String remedy) {
    String text = scalar.text();
    String shown = scalar.type() == CoreType.TEXT ? "\"" + text + "\"" : text;
    return Finding.of(
        "yaml.ambiguous-scalar",
        scalar.region(),
        new Message(shown + " is unquoted", readings(scalar), remedy));
  }

  private static String readings(Scalar scalar) {
    String older = older(scalar.text());
    String number =
        scalar.type() == CoreType.TEXT ? null : PlainNumber.of(scalar.text()).orElse(null);
    if (number == null) {
      return "readers of YAML 1.1 take it for " + older;
    }
    return isSameNumber(scalar.text(), number)
        ? "readers of YAML 1.1 take a leading zero for octal"
        : "readers of YAML 1.1 take it for " + older + ", those of YAML 1.2 for " + number;
  }
}
