package org.headhouse.linter.yaml;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.result.Finding;
import org.jspecify.annotations.Nullable;

/** Collects the entries of one mapping: each key once, merge keys followed. */
final class MappingBuilder {
  /** Up to this size, a search through the entries is quicker than an index. */
  private static final int SMALL = 16;

  private final List<Finding> findings;
  private final List<Mapping.Entry> entries = new ArrayList<>();
  private final List<Node> merged = new ArrayList<>();
  private @Nullable Map<String, Scalar> index;

  /** The bit of each key, by its hash. */
  private long hashes;

  MappingBuilder(List<Finding> findings) {
    this.findings = findings;
  }

  void add(Node key, Node value) {
    if (!(key instanceof Scalar scalar)) {
      findings.add(SyntaxFaults.keyIsNoText(key.region()));
    } else if (scalar.plain() && scalar.text().equals("<<")) {
      merged.add(value);
    } else {
      addOwn(scalar, value);
    }
  }

  private void addOwn(Scalar key, Node value) {
    Scalar first = mayBeThere(key.text()) ? find(key.text()) : null;
    if (first == null) {
      append(new Mapping.Entry(key, value, null));
    } else {
      findings.add(SyntaxFaults.duplicateKey(key, first));
    }
  }

  List<Mapping.Entry> build() {
    for (Node source : merged) {
      merge(source, null);
    }
    return entries;
  }

  private void merge(Node source, @Nullable Alias outer) {
    Cursor cursor = Cursor.at(source, outer);
    if (cursor.node() instanceof Mapping mapping) {
      for (Mapping.Entry entry : mapping.entries()) {
        if (find(entry.key().text()) == null) {
          Alias via = cursor.via() == null ? entry.via() : cursor.via();
          append(new Mapping.Entry(entry.key(), entry.value(), via));
        }
      }
    } else if (cursor.node() instanceof Sequence sequence && source == cursor.node()) {
      for (Node item : sequence.items()) {
        if (Cursor.at(item, null).node() instanceof Mapping) {
          merge(item, null);
        } else {
          findings.add(SyntaxFaults.mergedNoMapping(item.region()));
        }
      }
    } else {
      findings.add(SyntaxFaults.mergedNoMapping(source.region()));
    }
  }

  private void append(Mapping.Entry entry) {
    entries.add(entry);
    hashes |= bit(entry.key().text());
    if (index != null) {
      index.put(entry.key().text(), entry.key());
    } else if (entries.size() > SMALL) {
      Map<String, Scalar> all = new HashMap<>();
      entries.forEach(one -> all.put(one.key().text(), one.key()));
      index = all;
    }
  }

  /** Whether a key can be a duplicate: where its bit is not set, it is new, as most are. */
  private boolean mayBeThere(String key) {
    return (hashes & bit(key)) != 0;
  }

  private static long bit(String key) {
    int hash = key.hashCode();
    return 1L << (hash ^ (hash >>> 8) ^ (hash >>> 16));
  }

  private @Nullable Scalar find(String key) {
    if (index != null) {
      return index.get(key);
    }
    for (Mapping.Entry entry : entries) {
      if (entry.key().text().equals(key)) {
        return entry.key();
      }
    }
    return null;
  }
}
