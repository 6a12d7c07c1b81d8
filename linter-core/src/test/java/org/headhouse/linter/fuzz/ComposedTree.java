package org.headhouse.linter.fuzz;

import java.io.StringReader;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.yaml.Alias;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** Compares a tree with the one that the library's own composer makes, aliases followed. */
final class ComposedTree {
  private final Set<Object> compared = Collections.newSetFromMap(new IdentityHashMap<>());

  private ComposedTree() {}

  /**
   * @param text of one document without a fault
   */
  static void compare(Node root, String text) {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(Integer.MAX_VALUE);
    options.setNestingDepthLimit(Integer.MAX_VALUE);
    options.setMaxAliasesForCollections(Integer.MAX_VALUE);
    var composed = new Yaml(options).compose(new StringReader(text));
    if (composed != null) {
      new ComposedTree().compare(root, composed);
    }
  }

  private void compare(Node found, org.yaml.snakeyaml.nodes.Node expected) {
    if (!compared.add(expected)) {
      return;
    }
    Node node = found instanceof Alias alias ? alias.target() : found;
    boolean alike;
    if (expected instanceof ScalarNode scalar) {
      alike = node instanceof Scalar one && one.text().equals(scalar.getValue());
    } else if (expected instanceof SequenceNode sequence) {
      alike = node instanceof Sequence one && items(one.items(), sequence.getValue());
    } else {
      alike = node instanceof Mapping one && entries(one, ((MappingNode) expected).getValue());
    }
    Demand.that(alike, "%s is read as %s", expected, node);
  }

  private boolean items(List<Node> found, List<org.yaml.snakeyaml.nodes.Node> expected) {
    boolean alike = found.size() == expected.size();
    for (int i = 0; alike && i < found.size(); i++) {
      compare(found.get(i), expected.get(i));
    }
    return alike;
  }

  /** The composer leaves merge keys to the constructor, so mappings with one are passed over. */
  private boolean entries(Mapping found, List<NodeTuple> expected) {
    if (expected.stream().anyMatch(ComposedTree::merges)) {
      return true;
    }
    boolean alike = found.entries().size() == expected.size();
    for (int i = 0; alike && i < expected.size(); i++) {
      compare(found.entries().get(i).key(), expected.get(i).getKeyNode());
      compare(found.entries().get(i).value(), expected.get(i).getValueNode());
    }
    return alike;
  }

  private static boolean merges(NodeTuple tuple) {
    return tuple.getKeyNode() instanceof ScalarNode key && key.getValue().equals("<<");
  }
}
