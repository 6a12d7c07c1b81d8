package org.headhouse.linter.bind;

import java.util.List;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Mapping;
import org.jspecify.annotations.Nullable;

/**
 * The keys of one mapping, taken one by one; {@link #end} then reports whether any was left.
 *
 * <p>Keys are looked for from where the last one was found, since most files keep the usual order.
 * Each is asked for once.
 */
final class MappingReader {
  private final BindingIssues issues;
  private final Cursor cursor;
  private final List<Mapping.Entry> entries;
  private final Place owner;
  private int next;
  private int taken;

  /** Whether all before the next one are taken. */
  private boolean inOrder = true;

  private @Nullable ValueReader missing;

  /**
   * @param owner where the mapping's owner stands, for keys that are missing
   */
  MappingReader(Cursor cursor, Mapping mapping, Place owner, BindingIssues issues) {
    this.cursor = cursor;
    this.entries = mapping.entries();
    this.owner = owner;
    this.issues = issues;
  }

  /** A key that may be missing. */
  ValueReader optional(String key) {
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
    return new ValueReader(cursor.valueOf(entry), cursor.keyOf(entry), issues);
  }

  /** One for all, since it holds nothing: most keys of most mappings are left out. */
  private ValueReader missing() {
    ValueReader known = missing;
    if (known == null) {
      known = new ValueReader(null, owner, issues);
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
  ValueReader required(String key) {
    ValueReader value = optional(key);
    if (value.isMissing()) {
      issues.askSchema();
    }
    return value;
  }

  /** Asks the schema where the mapping has keys that nobody took. */
  void end() {
    if (taken < entries.size()) {
      issues.askSchema();
    }
  }
}
