package org.headhouse.linter.report.sheet;

import java.util.List;

/**
 * Computed values beside their limits.
 *
 * @param title what they are about
 * @param note why they are not computed or not right; empty where they are
 */
record FigureTable(String title, String note, List<Row> rows) {

  FigureTable {
    rows = List.copyOf(rows);
  }

  /** Whether a value is within its limit, in the word that the sheet prints. */
  enum Verdict {
    HOLDS("holds"),
    FAILS("does not hold"),
    NO_LIMIT("no limit");

    private final String word;

    Verdict(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }

    static Verdict of(boolean holds) {
      return holds ? HOLDS : FAILS;
    }
  }

  /**
   * One quantity.
   *
   * @param limit empty where there is none
   * @param margin what is left to the limit; empty where there is none
   * @param source where limit and formula come from
   */
  record Row(
      String quantity,
      String computed,
      String limit,
      String margin,
      Verdict verdict,
      String source) {

    static Row withoutLimit(String quantity, String computed, String source) {
      return new Row(quantity, computed, "", "", Verdict.NO_LIMIT, source);
    }
  }
}
