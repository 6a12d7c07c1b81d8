package org.headhouse.linter.report.sheet;

import java.util.Comparator;
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

  /**
   * How the rules judge a value: outside its limit where they report an error, below margin where
   * they report a warning. The worst comes first.
   */
  enum Verdict {
    OUTSIDE("outside limit"),
    BELOW_MARGIN("below margin"),
    WITHIN("within limit"),
    NO_LIMIT("no limit");

    private final String words;

    Verdict(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }

    /** The class of CSS that colours it; the words say the same. */
    String style() {
      return switch (this) {
        case OUTSIDE -> "level error";
        case BELOW_MARGIN -> "level warning";
        case WITHIN, NO_LIMIT -> "";
      };
    }

    static Verdict of(boolean isWithinLimit) {
      return of(isWithinLimit, true);
    }

    static Verdict of(boolean isWithinLimit, boolean hasMargin) {
      return !isWithinLimit ? OUTSIDE : hasMargin ? WITHIN : BELOW_MARGIN;
    }
  }

  /** The worst verdict of all tables. */
  static Verdict worst(List<FigureTable> tables) {
    return tables.stream()
        .flatMap(table -> table.rows().stream())
        .map(Row::verdict)
        .min(Comparator.naturalOrder())
        .orElse(Verdict.NO_LIMIT);
  }

  /** The sources of all tables, each once, in the order in which rows refer to them. */
  static List<String> sources(List<FigureTable> tables) {
    return tables.stream()
        .flatMap(table -> table.rows().stream())
        .map(Row::source)
        .distinct()
        .toList();
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
