package org.headhouse.linter.fuzz;

import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.CoreSchema;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.jspecify.annotations.Nullable;

/** Looks at the regions and types of a tree as it is written, aliases not followed. */
final class WrittenTree {
  private final SourceText source;
  private final Told told;

  WrittenTree(SourceText source, Told told) {
    this.source = source;
    this.told = told;
  }

  /** The characters of a region. */
  static String slice(SourceText source, Region region) {
    int from = source.offset(region.startLine(), region.startColumn());
    int to = source.offset(region.endLine(), region.endColumn());
    return asRead(source.text().substring(from, to));
  }

  /** YAML 1.2.2, 5.4: the three end no line. */
  static String asRead(String text) {
    return text.replaceAll("[\u0085\u2028\u2029]", "\uFFFD");
  }

  void look(Node node) {
    told.region(node.region());
    if (node instanceof Node.Valued valued && valued.anchor() != null) {
      Node.Anchor anchor = valued.anchor();
      Demand.that(
          slice(source, anchor.region()).equals("&" + anchor.name()), "no anchor at %s", anchor);
    }
    if (node instanceof Scalar scalar) {
      scalar(scalar);
    } else if (node instanceof Sequence sequence) {
      Region before = null;
      for (Node item : sequence.items()) {
        inside(sequence, before, item);
        look(item);
        before = item.region();
      }
    } else if (node instanceof Mapping mapping) {
      // What merge keys bring stands behind the rest, wherever it is written.
      boolean merges = source.text().contains("<<");
      Region before = null;
      for (Mapping.Entry entry : mapping.entries()) {
        if (!merges) {
          inside(mapping, before, entry.key());
          inside(mapping, entry.key().region(), entry.value());
        }
        look(entry.key());
        if (entry.via() == null) {
          look(entry.value());
        }
        before = entry.value().region();
      }
    }
  }

  private void scalar(Scalar scalar) {
    Region region = scalar.region();
    if (scalar.plain()) {
      Demand.that(
          scalar.type() == CoreSchema.type(scalar.text()),
          "\"%s\" is no %s",
          scalar.text(),
          scalar.type());
      Demand.that(
          region.startLine() != region.endLine() || slice(source, region).equals(scalar.text()),
          "\"%s\" does not stand at %s",
          scalar.text(),
          region);
    }
  }

  private static void inside(Node outer, @Nullable Region before, Node inner) {
    Demand.that(outer.region().contains(inner.region()), "%s is not inside %s", inner, outer);
    if (before != null) {
      boolean behind =
          before.endLine() < inner.region().startLine()
              || (before.endLine() == inner.region().startLine()
                  && before.endColumn() <= inner.region().startColumn());
      Demand.that(behind, "%s is not behind %s", inner.region(), before.toString());
    }
  }
}
