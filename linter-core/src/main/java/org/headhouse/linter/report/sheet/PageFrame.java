package org.headhouse.linter.report.sheet;

import java.util.Locale;
import java.util.regex.Pattern;
import org.headhouse.linter.report.Paper;

/**
 * The paper that a page is printed on, and the text at its foot.
 *
 * @param size a word of CSS
 * @param foot empty, or characters without a meaning in CSS
 */
record PageFrame(String size, String foot) {
  private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9 ,-]*");

  PageFrame {
    if (!PLAIN.matcher(size).matches() || !PLAIN.matcher(foot).matches()) {
      throw new IllegalArgumentException("not for a style sheet: " + size + ", " + foot);
    }
  }

  static PageFrame ofSite(String name, String revision, Paper paper) {
    String foot = PLAIN.matcher(name).matches() ? name + ", " : "";
    return new PageFrame(size(paper), foot + "revision " + revision);
  }

  static PageFrame ofIndex(Paper paper) {
    return new PageFrame(size(paper), "All sites");
  }

  static PageFrame ofCover(Paper paper) {
    return new PageFrame(size(paper), "All lines of one customer");
  }

  static PageFrame ofBundle(Paper paper) {
    return new PageFrame(size(paper), "Start here");
  }

  private static String size(Paper paper) {
    return paper.word().toLowerCase(Locale.ROOT);
  }
}
