package org.headhouse.linter.editor;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Alias;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.headhouse.linter.yaml.YamlReader;
import org.jspecify.annotations.Nullable;

/**
 * The way from the root of a text to what is at one place of it.
 *
 * @param steps each a key, or the number of an item in brackets
 * @param parents the node that each step starts from
 * @param node what is there
 * @param isKey whether it is the key of the last step, and not its value
 */
record YamlPath(List<String> steps, List<Node.Valued> parents, Node node, boolean isKey) {

  /** The tree of a text, or null where it cannot be read as YAML. */
  static Node.@Nullable Valued tree(SourceText source) {
    // A UTF-16 unit is one byte or more, so that a longer text is refused by a check as well.
    return source.text().length() > Limits.DEFAULT.bytes()
        ? null
        : new YamlReader(Limits.DEFAULT).read(source).root();
  }

  /** What is at a place, as deep as it goes; null where nothing is. */
  static @Nullable YamlPath at(Node.@Nullable Valued root, Region place) {
    return root == null ? null : find(root, new ArrayList<>(), new ArrayList<>(), place);
  }

  private static @Nullable YamlPath find(
      Node node, List<String> steps, List<Node.Valued> parents, Region place) {
    if (node instanceof Mapping mapping) {
      for (Mapping.Entry entry : mapping.entries()) {
        Alias via = entry.via();
        if (via != null) {
          if (via.region().contains(place)) {
            return new YamlPath(steps, parents, via, false);
          }
          continue;
        }
        if (entry.key().region().contains(place)) {
          return new YamlPath(
              with(steps, entry.key().text()), with(parents, mapping), entry.key(), true);
        }
        if (entry.value().region().contains(place)) {
          return find(
              entry.value(), with(steps, entry.key().text()), with(parents, mapping), place);
        }
      }
    } else if (node instanceof Sequence sequence) {
      for (int index = 0; index < sequence.items().size(); index++) {
        Node item = sequence.items().get(index);
        if (item.region().contains(place)) {
          return find(item, with(steps, "[" + index + "]"), with(parents, sequence), place);
        }
      }
    }
    return new YamlPath(steps, parents, node, false);
  }

  private static <T> List<T> with(List<T> list, T last) {
    List<T> longer = new ArrayList<>(list);
    longer.add(last);
    return longer;
  }

  /** The last key on the way, or nothing at the root. */
  String key() {
    for (int index = steps.size() - 1; index >= 0; index--) {
      if (!isItem(steps.get(index))) {
        return steps.get(index);
      }
    }
    return "";
  }

  /** Whether the way begins with a key. */
  boolean isUnder(String first) {
    return !steps.isEmpty() && steps.get(0).equals(first);
  }

  static boolean isItem(String step) {
    return step.startsWith("[");
  }

  /** What is there as text, or null where it is none. */
  @Nullable String text() {
    return node instanceof Scalar scalar ? scalar.text() : null;
  }

  /** Whether the place takes the name of an item of the chain that is named elsewhere. */
  boolean takesName() {
    if (isKey || isUnder("chain") || isUnder("defaults")) {
      return false;
    }
    return switch (key()) {
      case "at",
          "unit",
          "first-silent",
          "zones",
          "outdoor-readings-seen",
          "storm-response-seen",
          "stale-response-seen" ->
          true;
      default -> false;
    };
  }
}
