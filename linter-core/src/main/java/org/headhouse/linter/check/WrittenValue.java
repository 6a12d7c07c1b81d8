package org.headhouse.linter.check;

import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.headhouse.linter.yaml.CoreType;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.jspecify.annotations.Nullable;

/** The spelling of a value without regard to quotes, spaces and order. */
final class WrittenValue {
  private WrittenValue() {}

  /**
   * The value of a node, or null where it is neither a scalar nor a list of scalars.
   *
   * @param lists whether a list counts as a value
   */
  static @Nullable String of(Node node, boolean lists) {
    Node.Valued written = Cursor.at(node, null).node();
    if (written instanceof Scalar scalar) {
      return scalar(scalar);
    }
    return lists && written instanceof Sequence sequence ? list(sequence.items()) : null;
  }

  // All lists of values in the format are sets: conductors, readings, zones.
  private static @Nullable String list(List<Node> items) {
    TreeSet<String> values = new TreeSet<>();
    for (Node item : items) {
      if (!(Cursor.at(item, null).node() instanceof Scalar scalar)) {
        return null;
      }
      values.add(scalar(scalar));
    }
    return values.toString();
  }

  private static String scalar(Scalar scalar) {
    String text = scalar.text().strip().replaceAll("\\s+", " ");
    boolean word = scalar.type() == CoreType.BOOLEAN || scalar.type() == CoreType.NULL;
    return word ? text.toLowerCase(Locale.ROOT) : text;
  }
}
