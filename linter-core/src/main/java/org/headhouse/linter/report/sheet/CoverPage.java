package org.headhouse.linter.report.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import gg.jte.output.StringOutput;
import java.util.List;

/** The page over all lines of one customer, and the certificates behind it. */
public final class CoverPage {
  private static final int USUAL_SIZE = 1 << 14;

  private CoverPage() {}

  /**
   * The content of the page.
   *
   * @param customer the id of the customer
   * @param date the day on which it is made, in words
   */
  record Cover(PageFrame frame, String customer, String date, List<CoverRow> rows) {
    Cover {
      rows = List.copyOf(rows);
    }

    /** {@code 2 of 3 lines are proved}. */
    String summary() {
      long proved = rows.stream().filter(CoverRow::isProved).count();
      return proved
          + " of "
          + SpokenText.count(rows.size(), "line")
          + (proved == 1 ? " is" : " are")
          + " proved";
    }
  }

  /**
   * The page in UTF-8.
   *
   * @param rows in the order of the files
   */
  @SuppressWarnings("NullAway") // The compiled templates take null for no interceptor.
  public static byte[] html(String customer, List<CoverRow> rows, SheetSettings settings) {
    Cover cover =
        new Cover(
            PageFrame.ofCover(settings.paper()),
            PlainText.name(customer),
            SpokenText.day(settings.date()),
            rows);
    StringOutput out = new StringOutput(USUAL_SIZE);
    JtecoverGenerated.render(new PageOutput(out), null, cover);
    return out.toString().getBytes(UTF_8);
  }
}
