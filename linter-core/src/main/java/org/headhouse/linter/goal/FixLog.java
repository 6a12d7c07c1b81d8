package org.headhouse.linter.goal;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.AppliedFix;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.FixedSite;
import org.headhouse.linter.result.Result;

/** The lines that say what was fixed in each file, and in all of them together. */
final class FixLog {
  private final FixKind asked;
  private final ParameterNames called;
  private int files;
  private int changed;
  private int fixed;
  private int left;
  private int proposable;
  private boolean anyProposed;
  private boolean anyOpen;

  /**
   * @param asked which fixes are tried
   * @param called how the user writes parameters
   */
  FixLog(FixKind asked, ParameterNames called) {
    this.asked = asked;
    this.called = called;
  }

  /** What was fixed in a file, and the difference; none where nothing was. */
  List<String> lines(FixedSite site) {
    files++;
    int before = proposable;
    for (Result result : site.remaining()) {
      if (!result.suppressed()) {
        left++;
        Fix fix = result.fix();
        proposable += fix != null && !fix.kind().isWithin(asked) ? 1 : 0;
      }
    }
    anyOpen |= proposable > before && site.remaining().stream().anyMatch(FixLog::isOpenPoint);
    List<String> lines = new ArrayList<>();
    if (site.isChanged()) {
      changed++;
      fixed += site.applied().size();
      for (AppliedFix one : site.applied()) {
        anyProposed |= one.fix().kind() == FixKind.PROPOSED;
        lines.add(headline(site.path(), one));
      }
      UnifiedDiff.of(site.path(), site.before(), site.after())
          .forEach(line -> lines.add(TextReport.printable(line)));
    }
    return lines;
  }

  private static boolean isOpenPoint(Result result) {
    return result.rule().equals("draft.open-point");
  }

  private static String headline(String path, AppliedFix one) {
    return TextReport.printable(
        path
            + ": "
            + one.fix().kind().word()
            + ": "
            + one.fix().description()
            + " ["
            + one.result().rule()
            + "]");
  }

  /**
   * What was fixed in all files.
   *
   * @param written whether the files are written
   */
  List<String> summary(boolean written) {
    List<String> lines = new ArrayList<>();
    lines.add(
        counted(fixed, "fix", "fixes")
            + " in "
            + changed
            + " of "
            + counted(files, "site", "sites")
            + "; "
            + counted(left, "result is", "results are")
            + " left"
            + (proposable == 0
                ? ""
                : ", of which "
                    + proposable
                    + " would have a fix with "
                    + called.typed("fixes", "proposed")));
    if (anyOpen) {
      lines.add(
          "While a comment that begins with look: is left, the line may work: what is set at its"
              + " units is only changed by a proposed fix.");
    }
    if (anyProposed) {
      lines.add(
          "Proposed fixes change only the file: do the work at the units too. Isolate the"
              + " supply before you open a unit, and follow the local electrical code.");
    }
    if (fixed > 0 && !written) {
      lines.add("Nothing is written. To write the changes: " + called.turnedOn("write"));
    }
    return lines;
  }

  private static String counted(int number, String one, String several) {
    return number + " " + (number == 1 ? one : several);
  }
}
