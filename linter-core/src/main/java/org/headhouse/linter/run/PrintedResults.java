package org.headhouse.linter.run;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;

/**
 * Prints results, of each rule only the first in each file: one mistake that is made in all units
 * would hide everything else. The files for other programs have all of them.
 */
final class PrintedResults {
  /** As many as somebody reads before mending the first. */
  private static final int MOST_ALIKE = 20;

  private final Console console;

  /** Results that are alike, for which one is enough to see what is meant. */
  private record Alike(String file, String rule, Level level) {
    static Alike of(Result result) {
      return new Alike(result.location().file(), result.rule(), result.level());
    }
  }

  PrintedResults(Console console) {
    this.console = console;
  }

  /**
   * Prints results.
   *
   * @param results by file
   */
  void print(List<Result> results) {
    Map<Alike, Integer> printed = new HashMap<>();
    Map<Alike, Integer> more = new LinkedHashMap<>();
    String file = "";
    for (Result result : results) {
      if (!result.location().file().equals(file)) {
        more.forEach(this::printMore);
        more.clear();
        printed.clear();
        file = result.location().file();
      }
      Alike alike = Alike.of(result);
      if (printed.merge(alike, 1, Integer::sum) <= MOST_ALIKE) {
        TextReport.styled(result).forEach(line -> console.found(result.level(), line));
        console.found(result.level(), "");
      } else {
        more.merge(alike, 1, Integer::sum);
      }
    }
    more.forEach(this::printMore);
  }

  private void printMore(Alike alike, int number) {
    console.found(
        alike.level(), TextReport.more(alike.file(), alike.level(), number, alike.rule()));
    console.found(alike.level(), "");
  }
}
