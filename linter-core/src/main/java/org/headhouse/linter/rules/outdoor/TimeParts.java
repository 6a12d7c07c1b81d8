package org.headhouse.linter.rules.outdoor;

import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.line.ReadingAge;

/** Sums of times, told by their parts. */
final class TimeParts {
  private TimeParts() {}

  /** {@code 10.0 s until the broadcast after a lost one, 180 ms for another transaction, …}. */
  static String of(ReadingAge age, int lost, boolean oneSilent) {
    String other =
        age.otherSeconds() > 0
            ? ", "
                + Shown.seconds(age.otherSeconds())
                + (oneSilent ? " of waiting for the silent unit" : " for another transaction")
            : "";
    return Shown.seconds(age.periodsSeconds())
        + (switch (lost) {
          case 0 -> " until the next broadcast";
          case 1 -> " until the broadcast after a lost one";
          default -> " until the broadcast after " + lost + " lost ones";
        })
        + other
        + ", "
        + Shown.seconds(age.frameSeconds())
        + " for the broadcast itself";
  }
}
