package org.headhouse.linter.report.sheet;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;

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

  /** Says which state of which site it is, and whether it may be built from: on every page. */
  static PageFrame ofSite(String name, SiteFacts facts, Paper paper) {
    String foot = PLAIN.matcher(name).matches() ? name + ", " : "";
    String revision = facts.provenance().history().revision();
    String state =
        revision.isEmpty() || !PLAIN.matcher(revision).matches()
            ? "SHA-256 " + facts.revision()
            : "revision " + revision;
    return new PageFrame(size(paper), foot + state + ", " + openErrors(facts.results()));
  }

  private static String openErrors(List<Result> results) {
    long open =
        results.stream()
            .filter(result -> result.level() == Level.ERROR && !result.suppressed())
            .count();
    return open == 0 ? "no open errors" : open == 1 ? "1 open error" : open + " open errors";
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
