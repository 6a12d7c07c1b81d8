package org.headhouse.linter.schema;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.Error;
import com.networknt.schema.path.NodePath;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.yaml.Node;

/** Takes the errors of mistaken items of the chain together to one finding for each item. */
final class ChainFaults {
  private static final Set<String> FORM = Set.of("required", "additionalProperties");

  private final boolean hasChain;
  private final Tree tree;
  private final Set<String> known = new HashSet<>();
  private final IdentityHashMap<Node, Optional<Finding>> items = new IdentityHashMap<>();

  ChainFaults(FileKind kind, JsonNode schema, Tree tree) {
    this.hasChain = kind == FileKind.SITE;
    this.tree = tree;
    for (String item : ItemKind.KEYS) {
      schema.at("/$defs/" + item + "-item/properties").fieldNames().forEachRemaining(known::add);
    }
  }

  /** Whether an error is due to a mistaken item, which is reported instead. */
  boolean takes(Error error) {
    NodePath path = error.getInstanceLocation();
    int length = path.getNameCount();
    if (!hasChain || length < 2 || !path.getElement(0).toString().equals("chain")) {
      return false;
    }
    boolean ofForm = length == 2 && FORM.contains(error.getKeyword());
    boolean ofSides = length == 3 && path.getElement(2).toString().equals("termination");
    return (ofForm || ofSides) && mistake(ofForm ? path : path.getParent()).isPresent();
  }

  private Optional<Finding> mistake(NodePath item) {
    ErrorLocation where = tree.find(item);
    return items.computeIfAbsent(
        where.cursor().node(), node -> MistakenItem.of(where, tree, known));
  }

  List<Finding> findings() {
    return items.values().stream().flatMap(Optional::stream).toList();
  }
}
