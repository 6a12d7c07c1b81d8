package org.headhouse.linter.schema;

import com.networknt.schema.Error;
import com.networknt.schema.path.NodePath;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.source.Nearest;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/**
 * One error of the schema, told in the words of the trade.
 *
 * @param identity faults with the same identity are one mistake, met again through an alias
 */
record SchemaFault(Object identity, Finding finding) {

  private static final List<String> NAMING = List.of("unit", "repeater", "id", "rule");

  /** What a fault is about, whatever the way it was reached. */
  private record Identity(int node, String detail) {}

  static SchemaFault of(Error error, JsonNode schema, Cursor root) {
    Where where = Where.find(error.getInstanceLocation(), root);
    String keyword = error.getKeyword();
    JsonNode rules = enclosing(error, schema);
    return switch (keyword) {
      case "additionalProperties" -> unknownKey(error, where, rules);
      case "required" -> missingKey(error, where, rules);
      default -> badValue(keyword, where, rules);
    };
  }

  /** Whether a key is only missing because it is misspelt, which is told of the misspelt one. */
  static boolean isMisspelt(Error error, JsonNode schema, Cursor root) {
    if (!error.getKeyword().equals("required")) {
      return false;
    }
    Cursor cursor = Where.find(error.getInstanceLocation(), root).cursor();
    List<String> known =
        new ArrayList<>(enclosing(error, schema).path("properties").propertyNames());
    return cursor.node() instanceof Mapping mapping
        && mapping.entries().stream()
            .map(entry -> entry.key().text())
            .filter(key -> !known.contains(key))
            .anyMatch(key -> Nearest.to(key, known).equals(Optional.of(error.getProperty())));
  }

  /** The part of the schema that the failed keyword stands in. */
  private static JsonNode enclosing(Error error, JsonNode schema) {
    String pointer = error.getSchemaLocation().getFragment().toString();
    int last = pointer.lastIndexOf('/');
    return schema.at(last > 0 ? pointer.substring(0, last) : "");
  }

  private static SchemaFault unknownKey(Error error, Where where, JsonNode rules) {
    String key = error.getProperty();
    Mapping.Entry entry = where.cursor().entry(key);
    Place place = entry == null ? where.cursor().place() : where.cursor().keyOf(entry);
    List<String> known = new ArrayList<>(rules.path("properties").propertyNames());
    Optional<String> nearest =
        Nearest.to(key, known).filter(near -> where.cursor().entry(near) == null);
    String remedy =
        nearest
            .map(near -> "write \"" + near + "\"")
            .orElse("delete it, or write one of " + String.join(", ", known));
    return fault(
        entry == null ? where.cursor().node() : entry.key(),
        "key",
        Finding.of(
                "schema.unknown-key",
                place,
                new Message(
                    "the key \"" + key + "\" is not known here",
                    "what stands under it is not read",
                    remedy))
            .fixedBy(
                entry == null
                    ? null
                    : nearest
                        .map(
                            near ->
                                FixDraft.inFile(
                                    "Write the key \"" + near + "\"", Edit.write(place, near)))
                        .orElse(null)));
  }

  private static SchemaFault missingKey(Error error, Where where, JsonNode rules) {
    String key = error.getProperty();
    JsonNode known = rules.path("properties").path(key);
    String meaning = firstSentence(known.path("description").asString(""));
    return fault(
        where.cursor().node(),
        key,
        Finding.of(
            "schema.missing-key",
            where.owner(),
            new Message(
                where.called() + " lacks the key \"" + key + "\"",
                meaning.isEmpty() ? "the definition is not complete" : "it tells: " + meaning,
                "add \"" + key + "\"")));
  }

  private static String firstSentence(String description) {
    int stop = description.indexOf('.');
    String sentence = stop < 0 ? description : description.substring(0, stop);
    return sentence.isEmpty()
        ? ""
        : sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
  }

  private static SchemaFault badValue(String keyword, Where where, JsonNode rules) {
    ValueWords words = new ValueWords(rules);
    String quoted = quoted(where.cursor());
    String rule = words.rule(keyword);
    String fact = where.called() + " " + words.fact(keyword, quoted);
    Message message = new Message(fact, words.expectation(), words.remedy(scalar(where.cursor())));
    Place place = where.cursor().place();
    FixDraft fix =
        where.cursor().node() instanceof Scalar scalar
            ? ValueFix.of(keyword, scalar, place, rules)
            : null;
    return fault(where.cursor().node(), "value", Finding.of(rule, place, message).fixedBy(fix));
  }

  private static @Nullable String scalar(Cursor cursor) {
    return cursor.node() instanceof Scalar scalar ? scalar.text() : null;
  }

  private static String quoted(Cursor cursor) {
    if (cursor.node() instanceof Scalar scalar) {
      String text = scalar.text();
      return text.isEmpty()
          ? "nothing"
          : "\"" + (text.length() > 60 ? text.substring(0, 60) + "…" : text) + "\"";
    }
    return cursor.node() instanceof Sequence ? "a list" : "a block of keys";
  }

  private static SchemaFault fault(Object node, String detail, Finding finding) {
    return new SchemaFault(new Identity(System.identityHashCode(node), detail), finding);
  }

  /**
   * Where an error points.
   *
   * @param owner the key of the value; for an item of a list its first key
   */
  private record Where(Cursor cursor, Place owner, String called) {
    static Where find(NodePath path, Cursor root) {
      Cursor cursor = root;
      Place owner = first(root);
      String called = "the file";
      for (int i = 0; i < path.getNameCount(); i++) {
        Object step = path.getElement(i);
        if (cursor.node() instanceof Sequence sequence) {
          int index = Integer.parseInt(step.toString());
          cursor = cursor.inside(sequence.items().get(index));
          owner = first(cursor);
          called = named(cursor, "item " + (index + 1));
        } else {
          Mapping.Entry entry = cursor.entry(step.toString());
          if (entry == null) {
            break;
          }
          owner = cursor.keyOf(entry);
          cursor = cursor.valueOf(entry);
          called = "\"" + step + "\"";
        }
      }
      return new Where(cursor, owner, called);
    }

    /** An item of a list by the name that it gives itself. */
    private static String named(Cursor item, String otherwise) {
      for (String key : NAMING) {
        Cursor name = item.get(key);
        if (name != null && name.node() instanceof Scalar scalar && !scalar.text().isEmpty()) {
          return quoted(name);
        }
      }
      return otherwise;
    }

    private static Place first(Cursor cursor) {
      if (cursor.node() instanceof Mapping mapping && !mapping.entries().isEmpty()) {
        return cursor.keyOf(mapping.entries().get(0));
      }
      return cursor.place();
    }
  }
}
