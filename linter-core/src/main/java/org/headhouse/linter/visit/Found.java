package org.headhouse.linter.visit;

/** What a row says was found. */
sealed interface Found {
  /** Nothing, or nothing that is understood. */
  enum Nothing implements Found {
    NOTHING
  }

  /** That it was seen. */
  enum Seen implements Found {
    YES,
    NO
  }

  /**
   * What was measured.
   *
   * @param written as a site has it: {@code 0.29 V}
   */
  record Value(String written) implements Found {}
}
