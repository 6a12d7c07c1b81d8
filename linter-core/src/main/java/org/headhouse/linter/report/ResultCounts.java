package org.headhouse.linter.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;

/** How many results there are, by level and by rule, and how many of them have a fix. */
public final class ResultCounts {
  private final Map<Level, Integer> byLevel = new EnumMap<>(Level.class);
  private final Map<String, Integer> byRule = new TreeMap<>();
  private final Map<FixKind, Integer> fixable = new EnumMap<>(FixKind.class);
  private int suppressed;
  private int known;

  /** Counts more results. */
  public void add(List<Result> results) {
    results.forEach(this::add);
  }

  private void add(Result result) {
    if (result.suppressed()) {
      suppressed++;
    } else if (result.known()) {
      known++;
    } else {
      byLevel.merge(result.level(), 1, Integer::sum);
      byRule.merge(result.rule(), 1, Integer::sum);
      Fix fix = result.fix();
      if (fix != null) {
        fixable.merge(fix.kind(), 1, Integer::sum);
      }
    }
  }

  /**
   * The counts: a line for all, and one for each rule that is broken.
   *
   * @param files how many sites there are
   * @param units how many units they have
   */
  public List<String> lines(int files, int units) {
    List<String> lines = new ArrayList<>();
    lines.add(
        counted(files, "site")
            + ", "
            + counted(units, "unit")
            + ": "
            + counted(byLevel.getOrDefault(Level.ERROR, 0), "error")
            + ", "
            + counted(byLevel.getOrDefault(Level.WARNING, 0), "warning")
            + ", "
            + counted(byLevel.getOrDefault(Level.NOTE, 0), "note")
            + (suppressed == 0 ? "" : ", " + suppressed + " suppressed")
            + (known == 0 ? "" : ", " + known + " known from the baseline"));
    byRule.forEach((rule, count) -> lines.add(String.format(Locale.ROOT, "%6d  %s", count, rule)));
    return lines;
  }

  /**
   * What the goal fix can do about them; no lines where that is nothing.
   *
   * @param write what the user types to have fixes written
   * @param proposed what the user types for proposed fixes
   */
  public List<String> fixes(String write, String proposed) {
    List<String> lines = new ArrayList<>();
    int safe = fixable.getOrDefault(FixKind.SAFE, 0);
    int toPropose = fixable.getOrDefault(FixKind.PROPOSED, 0);
    if (safe > 0) {
      lines.add(
          safe
              + (safe == 1 ? " has a safe fix" : " have a safe fix")
              + ": goal fix shows it, and writes it with "
              + write);
    }
    if (toPropose > 0) {
      lines.add(
          toPropose
              + (toPropose == 1 ? " has a proposed fix" : " have a proposed fix")
              + ", to be looked at first: goal fix with "
              + proposed);
    }
    return lines;
  }

  /** A rule that is broken, as an example. */
  public Optional<String> brokenRule() {
    return byRule.keySet().stream().findFirst();
  }

  private static String counted(int number, String word) {
    return number + " " + word + (number == 1 ? "" : "s");
  }
}
