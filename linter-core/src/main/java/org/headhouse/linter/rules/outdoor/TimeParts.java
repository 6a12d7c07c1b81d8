package org.headhouse.linter.rules.outdoor;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.StormSum;
import org.headhouse.linter.line.ClosingTime;
import org.headhouse.linter.line.ReadingAge;
import org.headhouse.linter.site.Interval;
import org.jspecify.annotations.Nullable;

/** Sums of times in words, with their parts. */
final class TimeParts {
  private TimeParts() {}

  /** {@code 10.0 s until the broadcast after a lost one + 180 ms for another transaction + …}. */
  static String of(ReadingAge age, int lost, boolean oneSilent) {
    List<String> parts = new ArrayList<>();
    parts.add(
        Shown.seconds(age.periodsSeconds())
            + switch (lost) {
              case 0 -> " until the next broadcast";
              case 1 -> " until the broadcast after a lost one";
              default -> " until the broadcast after " + lost + " lost ones";
            });
    if (age.otherSeconds() > 0) {
      parts.add(
          Shown.seconds(age.otherSeconds())
              + (oneSilent ? " of waiting for the silent unit" : " for another transaction"));
    }
    parts.add(Shown.seconds(age.frameSeconds()) + " for the broadcast");
    return String.join(" + ", parts);
  }

  /** {@code 10 s averaging + 62.1 s on a dead line (stale-after 60 s) + 90 s closing}. */
  static String of(StormSum sum) {
    ClosingTime time = sum.time();
    List<String> parts = new ArrayList<>();
    add(time.averagingSeconds(), "averaging", parts);
    Interval staleAfter = sum.unit().staleAfter().orNull();
    if (time.isLongestOnDeadLine() && staleAfter != null) {
      add(time.staleSeconds(), "on a dead line (stale-after " + staleAfter.written() + ")", parts);
    } else {
      add(time.broadcastSeconds(), "age of the reading", parts);
    }
    add(time.closeSeconds(), "closing", parts);
    return String.join(" + ", parts) + (time.isComplete() ? "" : ", and what is not known");
  }

  private static void add(@Nullable Double seconds, String part, List<String> parts) {
    if (seconds != null) {
      parts.add(Shown.seconds(seconds) + " " + part);
    }
  }
}
