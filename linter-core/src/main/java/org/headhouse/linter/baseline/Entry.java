package org.headhouse.linter.baseline;

import static java.util.Comparator.comparing;
import static java.util.Comparator.naturalOrder;
import static java.util.Comparator.nullsFirst;

import java.util.Comparator;
import org.headhouse.linter.result.Identity;

/**
 * A result as a baseline keeps it.
 *
 * @param file of the site, from the folder of the baseline, with forward slashes
 */
record Entry(String file, Identity identity, String rule) implements Comparable<Entry> {
  private static final Comparator<Entry> ORDER =
      comparing(Entry::file)
          .thenComparing(entry -> entry.identity.at())
          .thenComparing(Entry::rule)
          .thenComparing(entry -> entry.identity.unit(), nullsFirst(naturalOrder()))
          .thenComparing(entry -> entry.identity.value(), nullsFirst(naturalOrder()))
          .thenComparing(entry -> entry.identity.graded(), nullsFirst(naturalOrder()))
          .thenComparing(entry -> entry.identity.detail(), nullsFirst(naturalOrder()))
          .thenComparing(entry -> entry.identity.site(), nullsFirst(naturalOrder()));

  @Override
  public int compareTo(Entry other) {
    return ORDER.compare(this, other);
  }
}
