package org.headhouse.linter.draft;

import java.util.List;

/**
 * What a list says.
 *
 * @param units in its order
 * @param unread the headings of columns that say nothing of them
 */
record ListedUnits(List<ListedUnit> units, List<String> unread) {
  static final ListedUnits NONE = new ListedUnits(List.of(), List.of());

  ListedUnits {
    units = List.copyOf(units);
    unread = List.copyOf(unread);
  }
}
