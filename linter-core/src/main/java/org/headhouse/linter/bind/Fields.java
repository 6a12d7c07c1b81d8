package org.headhouse.linter.bind;

import java.util.List;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Mapping;
import org.jspecify.annotations.Nullable;

/**
 * The keys of one mapping, taken one by one; {@link #end} then tells whether any was left.
 *
 * <p>Keys are looked for from where the last one was found, since most files keep the usual order.
 * Each is asked for once.
 */
final class Fields {
  private final Doubts doubts;
  private final Cursor cursor;
  private final List<Mapping.Entry> entries;
  private final Place owner;
  private int next;
  private int taken;

  /** Whether all before the next one are taken. */
  private boolean inOrder = true;

  private @Nullable Field missing;

  /**
   * @param owner where the mapping's owner stands, for keys that are missing
   */
  Fields(Cursor cursor, Mapping mapping, Place owner, Doubts doubts) {
    this.cursor = cursor;
    this.entries = mapping.entries();
    this.owner = owner;
    this.doubts = doubts;
  }

  /** A key that may be missing. */
  Field optional(String key) {
    int at = find(key, next, entries.size());
    if (at < 0 && !inOrder) {
      at = find(key, 0, next);
    }
    if (at < 0) {
      return missing();
    }
    inOrder &= at == taken;
    next = at + 1;
    taken++;
    Mapping.Entry entry = entries.get(at);
    return new Field(cursor.valueOf(entry), cursor.keyOf(entry), doubts);
  }

  /** One for all, since it holds nothing: most keys of most mappings are left out. */
  private Field missing() {
    Field known = missing;
    if (known == null) {
      known = new Field(null, owner, doubts);
      missing = known;
    }
    return known;
  }

  private int find(String key, int from, int to) {
    for (int at = from; at < to; at++) {
      if (entries.get(at).key().text().equals(key)) {
        return at;
      }
    }
    return -1;
  }

  /** A key that must be there. */
  Field required(String key) {
    Field field = optional(key);
    if (field.isMissing()) {
      doubts.add();
    }
    return field;
  }

  /** Raises a doubt where the mapping has keys that nobody took. */
  void end() {
    if (taken < entries.size()) {
      doubts.add();
    }
  }
}
