package org.headhouse.linter.bind;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.SpellingSuggester;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Mapping;
import org.jspecify.annotations.Nullable;

/**
 * The keys of one mapping, taken one by one; {@link #end} then reports whether any was left.
 *
 * <p>Keys are looked for from where the last one was found, since most files keep the usual order,
 * and only where a key of the same hash is there. Each is asked for once.
 */
final class MappingReader {
  private final BindingIssues issues;
  private final Cursor cursor;
  private final Mapping mapping;
  private final List<Mapping.Entry> entries;
  private static final int MOST_NAMED = 20;

  /** Which of the first entries are taken, a bit each. */
  private long takenBits;

  private final Place owner;
  private final long hashes;
  private int next;
  private int taken;

  /** Whether all before the next one are taken. */
  private boolean inOrder = true;

  private @Nullable ValueReader missing;

  /** Finds keys that nobody took in an earlier reading, and so are not known; null in the first. */
  private @Nullable SpellingSuggester unknown;

  /**
   * @param owner where the mapping's owner stands, for keys that are missing
   */
  MappingReader(Cursor cursor, Mapping mapping, Place owner, BindingIssues issues) {
    this.cursor = cursor;
    this.mapping = mapping;
    this.entries = mapping.entries();
    this.hashes = hashes(entries);
    this.owner = owner;
    this.issues = issues;
  }

  private static long hashes(List<Mapping.Entry> entries) {
    long bits = 0;
    for (int at = 0; at < entries.size(); at++) {
      bits |= bit(entries.get(at).key().text());
    }
    return bits;
  }

  private static long bit(String key) {
    int hash = key.hashCode();
    return 1L << (hash ^ (hash >>> 8) ^ (hash >>> 16));
  }

  /** Whether a key is there, taken or not. */
  boolean has(String key) {
    return mayHave(key) && find(key, 0, entries.size()) >= 0;
  }

  private boolean mayHave(String key) {
    return (hashes & bit(key)) != 0;
  }

  /** A key that may be missing. */
  ValueReader optional(String key) {
    if (!mayHave(key)) {
      return missing(key);
    }
    int at = find(key, next, entries.size());
    if (at < 0 && !inOrder) {
      at = find(key, 0, next);
    }
    if (at < 0) {
      return missing(key);
    }
    takenBits |= at < Long.SIZE ? 1L << at : 0;
    inOrder &= at == taken;
    next = at + 1;
    taken++;
    Mapping.Entry entry = entries.get(at);
    return new ValueReader(cursor.valueOf(entry), cursor.keyOf(entry), issues);
  }

  /** Of a key that is not there. Where an unknown one is spelt like it, its value is not known. */
  private ValueReader missing(String key) {
    return unknown != null && unknown.suggest(key).isPresent()
        ? ValueReader.misspelt(owner, issues)
        : missing();
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
    if (hasUnknown()) {
      issues.askSchema();
    }
  }

  /** Whether the mapping has keys that nobody took. */
  boolean hasUnknown() {
    return taken < entries.size();
  }

  /**
   * The same mapping to be read again, once it is known which of its keys are unknown. What was met
   * by the first reading is not met again.
   */
  MappingReader again() {
    MappingReader second = new MappingReader(cursor, mapping, owner, new BindingIssues(true));
    List<String> left = new ArrayList<>();
    for (int at = 0; at < Math.min(entries.size(), Long.SIZE) && left.size() < MOST_NAMED; at++) {
      if ((takenBits & (1L << at)) == 0) {
        left.add(entries.get(at).key().text());
      }
    }
    second.unknown = new SpellingSuggester(left);
    return second;
  }
}
