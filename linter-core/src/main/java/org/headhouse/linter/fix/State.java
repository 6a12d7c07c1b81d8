package org.headhouse.linter.fix;

import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.headhouse.linter.result.Replacement;
import org.headhouse.linter.result.Result;

/** The bytes between two rounds, and what a check of them finds. */
final class State {
  private static final Pattern SPACE = Pattern.compile("\\s");
  private static final Pattern NUMBER = Pattern.compile("(?<=/)[0-9]+(?=/|$)");

  private final byte[] bytes;
  private final FixLoop.Checked checked;
  private final Map<String, Integer> counts = new HashMap<>();

  private State(byte[] bytes, FixLoop.Checked checked) {
    this.bytes = bytes;
    this.checked = checked;
    for (Result result : checked.results()) {
      if (!result.suppressed() && !checked.onChanges().contains(result.rule())) {
        counts.merge(key(result), 1, Integer::sum);
      }
    }
  }

  static State of(byte[] bytes, FixLoop.Checker checker) {
    return new State(bytes, checker.check(bytes));
  }

  byte[] bytes() {
    return bytes;
  }

  FixLoop.Checked checked() {
    return checked;
  }

  /** The state once the fixes of some results are applied. */
  State fixed(List<Result> results, FixLoop.Checker checker) {
    return of(Splice.apply(bytes, replacements(results)), checker);
  }

  private static List<Replacement> replacements(List<Result> results) {
    return results.stream()
        .flatMap(result -> result.fix() == null ? null : result.fix().replacements().stream())
        .toList();
  }

  /** How often each rule is broken at each place. */
  Map<String, Integer> counts() {
    return Collections.unmodifiableMap(counts);
  }

  /**
   * The rule and the logical path, without spaces and the numbers of list items: fixes change them.
   */
  static String key(Result result) {
    String place = NUMBER.matcher(withoutSpaces(result.logical())).replaceAll("#");
    String unit = result.unit() == null ? "" : withoutSpaces(result.unit());
    return result.rule() + "\n" + place + "\n" + unit;
  }

  private static String withoutSpaces(String text) {
    return SPACE.matcher(text).replaceAll("");
  }
}
