package org.headhouse.linter.yaml;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;

/**
 * The marks that git leaves in a file where two changes could not be merged (git-merge(1), "How
 * conflicts are presented"): lines that start with seven of one sign.
 */
final class MergeMarks {
  private static final int WIDTH = 7;
  private static final String OURS = "<<<<<<<";
  private static final String THEIRS = ">>>>>>>";
  private static final List<String> MARKS = List.of(OURS, "|||||||", "=======", THEIRS);

  private MergeMarks() {}

  /** One finding for each place where two versions of the same lines are in the file. */
  static List<Finding> findings(SourceText source) {
    List<Finding> findings = new ArrayList<>();
    Finding open = null;
    for (int line = 1; line <= source.lines(); line++) {
      String start = source.line(line, WIDTH + 1);
      if (!isMark(start)) {
        continue;
      }
      Region mark = Region.onLine(line, 1, WIDTH);
      boolean closes = start.startsWith(THEIRS);
      if (open != null && closes) {
        open = open.related(mark, "the second version ends here");
      } else if (open == null || start.startsWith(OURS)) {
        if (open != null) {
          findings.add(open);
        }
        open = finding(mark);
      }
      if (closes) {
        findings.add(open);
        open = null;
      }
    }
    if (open != null) {
      findings.add(open);
    }
    return findings;
  }

  /** Whether a line starts with a mark, and nothing or a space follows. */
  private static boolean isMark(String start) {
    return start.length() >= WIDTH
        && MARKS.contains(start.substring(0, WIDTH))
        && (start.length() == WIDTH || start.charAt(WIDTH) == ' ');
  }

  private static Finding finding(Region mark) {
    return Finding.of(
        "file.merge-marks",
        mark,
        new Message(
            "an unfinished merge left two versions of these lines",
            SyntaxFaults.NOT_READ,
            "keep the version that is right, and delete the other one and the marker lines"));
  }
}
