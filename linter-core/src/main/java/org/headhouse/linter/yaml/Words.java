package org.headhouse.linter.yaml;

import org.jspecify.annotations.Nullable;

/**
 * Lets equal texts of one file be one object.
 *
 * <p>The same few words make up most of a file. As one object they stay in the processor's nearest
 * cache, where every unit's copies would have to be fetched from behind what the parser leaves.
 */
final class Words {
  private static final int PLACES = 256;
  private static final int LONGEST = 24;

  /** The last text for each place; another that belongs there takes it. */
  private final @Nullable String[] known = new @Nullable String[PLACES];

  /** A text that is equal to the given one. */
  String shared(String text) {
    if (text.length() > LONGEST) {
      return text;
    }
    int hash = text.hashCode();
    int place = (hash ^ (hash >>> 8) ^ (hash >>> 16)) & (PLACES - 1);
    String before = known[place];
    if (before != null && before.equals(text)) {
      return before;
    }
    known[place] = text;
    return text;
  }
}
