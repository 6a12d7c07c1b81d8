package org.headhouse.linter.check;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.site.OpenMark;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;
import org.headhouse.linter.yaml.Comment;
import org.headhouse.linter.yaml.Document;

/** Reports what a draft left open and nobody has looked at yet. */
final class OpenPoints {
  private static final int MOST_SHOWN = 70;

  private OpenPoints() {}

  /**
   * The comments with the mark, each as one finding. To find comments takes a second pass over a
   * file, so that only one that has the mark somewhere is searched for them.
   */
  static List<Finding> of(Document document, Site site) {
    if (!OpenMark.isIn(document.source().text())) {
      return List.of();
    }
    boolean live = site.stage().is(Stage.COMMISSIONED);
    List<Finding> findings = new ArrayList<>();
    for (Comment comment : document.comments()) {
      if (comment.text().startsWith(OpenMark.MARK)) {
        Finding finding = finding(comment);
        findings.add(live ? finding : finding.at(Level.NOTE));
      }
    }
    return findings;
  }

  private static Finding finding(Comment comment) {
    String asked = comment.text().substring(OpenMark.MARK.length()).strip();
    return Finding.of(
            "draft.open-point",
            comment.region(),
            new Message(
                "the draft left this open: " + shown(asked),
                "until somebody has compared it with the site, every figure and every sheet may"
                    + " be wrong",
                "compare it with the site, correct the file if it differs, and then delete the"
                    + " comment"))
        .about(asked);
  }

  private static String shown(String asked) {
    return asked.codePointCount(0, asked.length()) <= MOST_SHOWN
        ? asked
        : asked.substring(0, asked.offsetByCodePoints(0, MOST_SHOWN)).strip() + " …";
  }
}
