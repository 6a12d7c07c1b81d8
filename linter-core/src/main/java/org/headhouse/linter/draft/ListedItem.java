package org.headhouse.linter.draft;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import org.headhouse.linter.site.DeviceType;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.site.Role;
import org.jspecify.annotations.Nullable;

/**
 * One row of a list.
 *
 * @param start the first cell of the row
 * @param values what it says, as a site has it but for quotes; without what it does not say
 * @param type {@link DeviceType#UNKNOWN} where nothing is known of it
 */
record ListedItem(
    Cell start, ItemKind kind, String name, Map<Column, String> values, DeviceType type) {
  ListedItem {
    Map<Column, String> own = new EnumMap<>(Column.class);
    own.putAll(values);
    values = Collections.unmodifiableMap(own);
  }

  /** What it says in a column, or null. */
  @Nullable String value(Column column) {
    return values.get(column);
  }

  boolean isUnit() {
    return kind == ItemKind.UNIT;
  }

  boolean isHead() {
    return isUnit() && Role.HEAD.word().equals(values.get(Column.ROLE));
  }

  /** The same with another value. */
  ListedItem with(Column column, String value) {
    Map<Column, String> other = new EnumMap<>(Column.class);
    other.putAll(values);
    other.put(column, value);
    return new ListedItem(start, kind, name, other, type);
  }
}
