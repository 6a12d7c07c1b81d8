package org.headhouse.linter.visit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.yaml.Alias;
import org.headhouse.linter.yaml.CoreType;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;

/** What a reader of YAML finds in a tree, without places: texts, lists and mappings of them. */
final class PlainTree {
  /** Of a scalar that is no text, so that 1 is not taken for "1". */
  private record Other(CoreType type, String text) {}

  private PlainTree() {}

  /** A text, a list, a mapping, or a scalar of another type. */
  static Object of(Node node) {
    if (node instanceof Alias alias) {
      return of(alias.target());
    }
    if (node instanceof Scalar scalar) {
      return scalar.type() == CoreType.TEXT
          ? scalar.text()
          : new Other(scalar.type(), scalar.text());
    }
    if (node instanceof Sequence sequence) {
      List<Object> items = new ArrayList<>();
      sequence.items().forEach(item -> items.add(of(item)));
      return items;
    }
    return mapping((Mapping) node);
  }

  private static Map<String, Object> mapping(Mapping mapping) {
    Map<String, Object> content = new LinkedHashMap<>();
    for (Mapping.Entry entry : mapping.entries()) {
      content.put(entry.key().text(), of(entry.value()));
    }
    return content;
  }

  /** The mapping of a tree whose root is one. */
  static Map<String, Object> ofMapping(Node root) {
    return root instanceof Mapping mapping ? mapping(mapping) : Map.of();
  }
}
