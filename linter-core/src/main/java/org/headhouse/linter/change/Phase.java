package org.headhouse.linter.change;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A step with the line before and after it.
 *
 * @param back what undoes it, or null where nothing is done at the line
 * @param places the items at which it is done
 */
record Phase(
    Step step, @Nullable Step back, LineMoment before, LineMoment after, List<TrackedItem> places) {
  Phase {
    places = List.copyOf(places);
  }

  /** The same step with more items isolated; for a piece of wiring only. */
  Phase isolating(List<TrackedItem> items) {
    List<String> names = items.stream().map(TrackedItem::name).toList();
    Step isolated = step instanceof Step.Wire wire ? new Step.Wire(wire.places(), names) : step;
    Step undone = back instanceof Step.Wire wire ? new Step.Wire(wire.places(), names) : back;
    return new Phase(isolated, undone, before, after, items);
  }
}
