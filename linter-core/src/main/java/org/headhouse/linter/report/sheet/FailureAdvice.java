package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.site.Unit;

/** What a set-up card says of the day on which its unit fails. */
final class FailureAdvice {
  private static final int MOST_FAULTS = 2;

  private FailureAdvice() {}

  /**
   * Sentences, the most urgent first.
   *
   * @param bypasses by the places of the units in the chain
   * @param feeds whether its supply feeds the bias of others
   */
  static List<String> of(Unit unit, Map<Integer, Bypass> bypasses, boolean feeds) {
    Bypass bypass = bypasses.get(unit.index());
    List<String> advice = new ArrayList<>();
    if (unit.isHead() || bypass == null) {
      advice.add(
          "No follower gets readings: do what the night card says. Without a head unit the line does"
              + " not run, even with its cables joined: fit another with the settings of this card.");
    } else {
      advice.add(
          (VentWords.mayMove(unit)
                  ? "Its house loses readings and control: close its vents by hand. "
                  : "It loses readings and control. ")
              + (feeds
                  ? "Its supply also feeds the bias, and without bias perhaps no other house gets"
                      + " readings: treat all others as the night card says under 2."
                  : "The others go on."));
      advice.add(lineWithout(bypass));
      outside(bypass, advice);
    }
    advice.add(
        "Set-points are not in the file: note them here. Work inside is for licensed people, with"
            + " the supply isolated and locked off.");
    return advice;
  }

  private static String lineWithout(Bypass bypass) {
    String joining =
        "If they lose readings too, take it off the pair"
            + (bypass.isOnBranch()
                ? " where its branch leaves the trunk."
                : bypass.isEnd()
                    ? ", and take the last run of cable off "
                        + PlainText.name(bypass.neighbour())
                        + ", the new end."
                    : " and join its two cables: D1 to D1, D0 to D0, common to common, shield to"
                        + " shield.");
    return bypass.moves()
        ? joining + " Move to " + PlainText.name(bypass.neighbour()) + ": " + moved(bypass) + "."
        : joining;
  }

  private static String moved(Bypass bypass) {
    List<String> parts = new ArrayList<>();
    if (!bypass.termination().isEmpty()) {
      parts.add("terminator " + PlainText.name(bypass.termination()));
    }
    if (bypass.bias()) {
      parts.add("bias resistors");
    }
    if (bypass.drain()) {
      parts.add("ground of the shield");
    }
    return String.join(", ", parts);
  }

  /** What moves is computed anew; what is only joined is as long as before, and loaded less. */
  private static void outside(Bypass bypass, List<String> advice) {
    if (!bypass.isJudged()) {
      advice.add("Whether the line is within its limits then is not known.");
    } else if (!bypass.faults().isEmpty()) {
      advice.add(
          "The line is outside its limits then: "
              + PlainText.sentence(
                  String.join("; ", bypass.faults().stream().limit(MOST_FAULTS).toList()))
              + ". Look at every display afterwards, and do not rely on readings.");
    }
  }
}
