package org.headhouse.linter.fix;

import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Replacement;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.jspecify.annotations.Nullable;

/**
 * What is written where an edit points to.
 *
 * @param region of the node that is changed
 * @param user the place that the edit names: the region itself, or the outermost alias to it
 * @param replacement the edit carried out, or null where it cannot be
 */
record Target(Region region, Region user, @Nullable Replacement replacement) {

  /** Null where nothing of the kind is written there. */
  static @Nullable Target of(Edit edit, NodeIndex written, EditWriter writer) {
    Place at = edit.at();
    if (edit instanceof Edit.Write write) {
      Scalar scalar = written.scalar(at);
      Sequence whole = written.sequence(at);
      if (whole != null && write.style() == Edit.Style.PLAIN) {
        return of(at, whole.region(), writer.write(whole, write));
      }
      return scalar == null ? null : of(at, scalar.region(), writer.write(scalar, write));
    }
    if (edit instanceof Edit.AddKeys addKeys) {
      Mapping mapping = written.mapping(at);
      return mapping == null ? null : of(at, mapping.region(), writer.addKeys(mapping, addKeys));
    }
    if (edit instanceof Edit.AddItems addItems) {
      Sequence list = written.sequence(at);
      return list == null ? null : of(at, list.region(), writer.addItems(list, addItems));
    }
    Place.Anchored anchored = at.anchored();
    Region item =
        anchored == null || written.listOf(at.region()) != null ? at.region() : anchored.value();
    Sequence list = written.listOf(item);
    return list == null ? null : new Target(item, at.region(), writer.removeItem(list, item));
  }

  private static Target of(Place at, Region region, @Nullable Replacement replacement) {
    return new Target(region, at.anchored() == null ? region : at.region(), replacement);
  }
}
