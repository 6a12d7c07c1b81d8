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

/** Reports what a draft or a visit left open and nobody has dealt with yet. */
final class OpenPoints {
  private static final int MOST_SHOWN = 70;

  /** Of a fact that is shown alone. */
  private static final int MOST_OF_A_VISIT = 100;

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
            OpenMark.isNotSeen(asked) ? ofVisit(asked) : ofDraft(asked))
        .about(asked);
  }

  private static Message ofDraft(String asked) {
    return new Message(
        "the draft left this open: " + shown(asked, MOST_SHOWN),
        "until somebody has compared it with the site, every figure and every sheet may be wrong",
        "compare it with the site, correct the file if it differs, and then delete the comment");
  }

  private static Message ofVisit(String notSeen) {
    return new Message(
        shown(notSeen, MOST_OF_A_VISIT),
        "the unit may fail in the next storm, whatever an older record says",
        "find the cause and fix it on site, prove it again, and enter that in the record; then"
            + " delete the comment. Until then set stage: planned");
  }

  private static String shown(String text, int most) {
    return text.codePointCount(0, text.length()) <= most
        ? text
        : text.substring(0, text.offsetByCodePoints(0, most)).strip() + " …";
  }
}
