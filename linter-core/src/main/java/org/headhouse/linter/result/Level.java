package org.headhouse.linter.result;

import java.util.Locale;
import java.util.Optional;

/** How severe a result is, the most severe first; the words are SARIF's. */
public enum Level {
  ERROR,
  WARNING,
  NOTE,
  /** Switched off; as a threshold, one that nothing reaches. */
  NONE;

  /** The word as it is written in files and on the command line. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The level of a word, where it is one. */
  public static Optional<Level> ofWord(String word) {
    for (Level level : values()) {
      if (level.word().equals(word)) {
        return Optional.of(level);
      }
    }
    return Optional.empty();
  }

  /**
   * Whether this level is as severe as a threshold or more; {@code NONE} reaches nothing, and
   * nothing reaches it.
   */
  public boolean reaches(Level threshold) {
    return threshold != NONE && compareTo(threshold) <= 0;
  }

  /** The milder of two levels. */
  public Level atMost(Level other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
