package org.headhouse.linter.diagram;

import java.util.Arrays;
import org.headhouse.linter.diagram.Part.Sign;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Site;

/** How wide the cards of a line are: the longest word of a name is not broken where that can be. */
final class CardWidth {
  /** Between two cards, at least. */
  static final double BETWEEN = 10;

  private static final int LEAST_COLUMNS = 3;

  private CardWidth() {}

  static double of(Site site, ResultMarks marks, Detail detail, double pageWidth) {
    double longest =
        site.items().stream().mapToDouble(item -> longestWord(item, marks, detail)).max().orElse(0);
    int columns = detail.mostColumns();
    while (columns > LEAST_COLUMNS && width(columns, pageWidth) < longest + 2 * Card.PADDING) {
      columns--;
    }
    return width(columns, pageWidth);
  }

  private static double width(int columns, double pageWidth) {
    return Math.floor((pageWidth - 2 * Trunk.GUTTER) / columns - BETWEEN);
  }

  private static double longestWord(ChainItem item, ResultMarks marks, Detail detail) {
    double word =
        Arrays.stream(Names.plain(item).split(" "))
            .mapToDouble(detail.nameStyle()::widthOf)
            .max()
            .orElse(0);
    return word + (marks.of(item) == null ? 0 : Sign.WIDTH);
  }
}
