package org.headhouse.linter.report.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;

import gg.jte.output.StringOutput;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The first page of a bundle: what is in it, and what to do with it. */
public final class StartPage {
  private static final int USUAL_SIZE = 1 << 14;

  private StartPage() {}

  /**
   * The content of the page.
   *
   * @param date the day on which it is made, in words
   * @param cover the page over all lines; empty where there is but one
   */
  record Start(PageFrame frame, String owner, String date, String cover, List<StartRow> rows) {
    Start {
      rows = List.copyOf(rows);
    }
  }

  /**
   * The page in UTF-8.
   *
   * @param owner the id of the customer, else the name of the page of the site
   * @param rows in the order of the files
   * @param cover the file of the page over all lines, where there is one
   */
  @SuppressWarnings("NullAway") // The compiled templates take null for no interceptor.
  public static byte[] html(
      String owner, List<StartRow> rows, @Nullable String cover, SheetSettings settings) {
    Start start =
        new Start(
            PageFrame.ofBundle(settings.paper()),
            PlainText.name(owner),
            SpokenText.day(settings.date()),
            cover == null ? "" : PageNames.link(cover),
            rows);
    StringOutput out = new StringOutput(USUAL_SIZE);
    JtestartGenerated.render(new PageOutput(out), null, start);
    return out.toString().getBytes(UTF_8);
  }
}
