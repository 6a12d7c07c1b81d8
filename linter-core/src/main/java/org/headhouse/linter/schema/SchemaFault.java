package org.headhouse.linter.schema;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.jspecify.annotations.Nullable;

/**
 * One error of the schema in the words of the trade.
 *
 * @param node the node with the fault, without the alias that led to it
 * @param detail distinguishes faults of one node
 */
record SchemaFault(Node node, String detail, Finding finding) {
  private static final String NOT_READ = "nothing can be checked without its keys";

  static SchemaFault of(Error error, JsonNode schema, Tree tree) {
    ErrorLocation where = tree.find(error.getInstanceLocation());
    ExpectedValue expected = ExpectedValue.of(error.getEvaluationPath(), schema);
    return switch (error.getKeyword()) {
      case "additionalProperties" -> unknownKey(error.getProperty(), where, expected, tree);
      case "required" -> missingKey(error.getProperty(), where, expected);
      case "uniqueItems" -> writtenTwice(where);
      default -> badValue(error.getKeyword(), where, expected, tree);
    };
  }

  /** The fault of a value that a comma has cut, where an unknown key is the rest of it. */
  static Optional<SchemaFault> decimalComma(Error error, JsonNode schema, Tree tree) {
    return error.getKeyword().equals("additionalProperties")
        ? DecimalComma.of(
            tree.find(error.getInstanceLocation()).cursor(),
            error.getProperty(),
            ExpectedValue.of(error.getEvaluationPath(), schema),
            tree)
        : Optional.empty();
  }

  /** Whether a key is only missing because it is misspelt; the misspelt one is reported. */
  static boolean isMisspelt(Error error, JsonNode schema, Tree tree) {
    if (!error.getKeyword().equals("required")) {
      return false;
    }
    Cursor cursor = tree.find(error.getInstanceLocation()).cursor();
    List<String> known = ExpectedValue.of(error.getEvaluationPath(), schema).keys();
    return cursor.node() instanceof Mapping mapping
        && mapping.entries().stream()
            .map(entry -> entry.key().text())
            .filter(key -> !known.contains(key))
            .anyMatch(key -> meant(key, known, tree).equals(Optional.of(error.getProperty())));
  }

  private static Optional<String> meant(String key, List<String> known, Tree tree) {
    int colon = key.indexOf(':');
    return tree.meant().of(colon < 0 ? key : key.substring(0, colon), known);
  }

  private static SchemaFault unknownKey(
      String key, ErrorLocation where, ExpectedValue expected, Tree tree) {
    Cursor cursor = where.cursor();
    Mapping.Entry entry = tree.entry(cursor, key);
    Message message =
        KeyWords.unknown(
            key, expected.keys(), known -> tree.entry(cursor, known) == null, tree.meant());
    return entry == null
        ? new SchemaFault(cursor.node(), key, unknownKey(cursor.place(), message))
        : new SchemaFault(
            entry.key(),
            "key",
            unknownKey(cursor.keyOf(entry), message)
                .fixedBy(keyFix(key, cursor.keyOf(entry), expected, tree, cursor)));
  }

  private static @Nullable FixDraft keyFix(
      String key, Place place, ExpectedValue expected, Tree tree, Cursor cursor) {
    return tree.meant()
        .of(key, expected.keys())
        .filter(known -> tree.entry(cursor, known) == null)
        .map(
            near ->
                new FixDraft(
                    tree.meant().isCertain(key, near, expected.keys())
                        ? FixKind.SAFE
                        : FixKind.PROPOSED,
                    "Write the key \"" + near + "\"",
                    List.of(Edit.write(place, near))))
        .orElse(null);
  }

  private static Finding unknownKey(Place place, Message message) {
    return Finding.of("schema.unknown-key", place, message);
  }

  private static SchemaFault missingKey(String key, ErrorLocation where, ExpectedValue expected) {
    Message message = KeyWords.missing(key, where.called(), expected.property(key));
    return new SchemaFault(
        where.cursor().node(), key, Finding.of("schema.missing-key", where.owner(), message));
  }

  private static SchemaFault badValue(
      String keyword, ErrorLocation where, ExpectedValue expected, Tree tree) {
    Cursor cursor = where.cursor();
    ActualValue actual = new ActualValue(cursor.node());
    ValueWords words = new ValueWords(keyword, expected, actual);
    boolean isFile = cursor.node() == tree.root().node();
    String fact = isFile && actual.isNothing() ? "is empty" : words.fact();
    String remedy =
        isFile
            ? KeyWords.start(expected)
            : new Remedy(keyword, expected, actual, tree.isInFeet()).text();
    Message message =
        new Message(where.called() + " " + fact, isFile ? NOT_READ : words.expectation(), remedy);
    FixDraft fix =
        cursor.node() instanceof Scalar scalar
            ? ValueFix.of(keyword, scalar, cursor.place(), expected)
            : null;
    return new SchemaFault(
        cursor.node(), "value", Finding.of(words.rule(), cursor.place(), message).fixedBy(fix));
  }

  /** In a list whose items must differ, the first item that was there before. */
  private static SchemaFault writtenTwice(ErrorLocation where) {
    Cursor list = where.cursor();
    Set<JsonNode> seen = new HashSet<>();
    for (Node item :
        list.node() instanceof Sequence sequence ? sequence.items() : List.<Node>of()) {
      Cursor cursor = list.inside(item);
      if (!seen.add(JsonTree.of(cursor))) {
        Message message =
            new Message(
                new ActualValue(cursor.node()).shown() + " appears twice in " + where.called(),
                "each item of the list counts once",
                "delete one of the two");
        return new SchemaFault(
            list.node(), "twice", Finding.of("schema.out-of-range", cursor.place(), message));
      }
    }
    throw new IllegalStateException("no item is there twice in " + where.called());
  }
}
