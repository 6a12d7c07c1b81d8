package org.headhouse.linter.draft;

import java.util.List;
import java.util.Set;
import org.headhouse.linter.site.ItemKind;

/**
 * What a list says.
 *
 * @param items in its order
 * @param columns that it has
 * @param unread the headings of columns that are not read
 */
record ListedChain(List<ListedItem> items, Set<Column> columns, List<String> unread) {
  static final ListedChain NONE = new ListedChain(List.of(), Set.of(), List.of());

  ListedChain {
    items = List.copyOf(items);
    columns = Set.copyOf(columns);
    unread = List.copyOf(unread);
  }

  /** Whether it has a row for an item of a kind. */
  boolean has(ItemKind kind) {
    return items.stream().anyMatch(item -> item.kind() == kind);
  }

  /** Whether some row has a value in a column. */
  boolean says(Column column) {
    return items.stream().anyMatch(item -> item.value(column) != null);
  }

  /** Whether the addresses of the units are those that are set on site. */
  boolean hasAddresses() {
    return items.stream().anyMatch(item -> item.isUnit() && item.value(Column.ADDRESS) != null);
  }

  /** The index of the first head unit; of the first unit where no row says which it is. */
  int head() {
    int first = -1;
    for (int i = 0; i < items.size(); i++) {
      if (items.get(i).isHead()) {
        return i;
      }
      first = first < 0 && items.get(i).isUnit() ? i : first;
    }
    return Math.max(0, first);
  }
}
