package org.headhouse.linter.editor;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.fix.FixLoop;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.FixedSite;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.Region;

/**
 * The fixes of one text that was checked. Like those of the goal fix, each is tried first: it is
 * offered where its own result is gone after it, and no new one has come.
 */
final class QuickFixes {
  /** Each is tried by checks of the whole text. */
  private static final int MOST = 12;

  private final OpenText text;
  private final SiteLinter linter;
  private final BaseFolder base;
  private final List<Result> results;

  QuickFixes(Workspace.Checked checked, BaseFolder base) {
    this.text = checked.text();
    this.linter = checked.found().linter();
    this.base = base;
    this.results = checked.own(base);
  }

  /**
   * A fix as it can be made.
   *
   * @param results what it takes away
   * @param after the whole text after it
   */
  record Tried(Fix fix, List<Result> results, String after) {
    boolean isSafe() {
      return fix.kind() == FixKind.SAFE;
    }
  }

  /** What tells one result from the others of its text. */
  private record Key(String rule, String logical, String unit) {
    static Key of(Result result) {
      return new Key(result.rule(), result.logical(), String.valueOf(result.unit()));
    }
  }

  /** The fixes of the results that a region touches. */
  List<Tried> touching(Region asked) {
    Map<Fix, List<Result>> byFix = new LinkedHashMap<>();
    for (Result result : results) {
      Fix fix = result.fix();
      if (fix != null && touches(asked, result.location().region())) {
        byFix.computeIfAbsent(fix, any -> new ArrayList<>()).add(result);
      }
    }
    List<Tried> tried = new ArrayList<>();
    byFix.entrySet().stream()
        .limit(MOST)
        .forEach(
            one -> {
              String after = after(one.getValue());
              if (!after.equals(text.text())) {
                tried.add(new Tried(one.getKey(), one.getValue(), after));
              }
            });
    return tried;
  }

  private static boolean touches(Region one, Region other) {
    return !isAfter(one.startLine(), one.startColumn(), other.endLine(), other.endColumn())
        && !isAfter(other.startLine(), other.startColumn(), one.endLine(), one.endColumn());
  }

  private static boolean isAfter(int line, int column, int otherLine, int otherColumn) {
    return line > otherLine || (line == otherLine && column > otherColumn);
  }

  /** The text with one fix, and with the fixes of what only that one brings. */
  private String after(List<Result> chosen) {
    Set<Key> asked = new HashSet<>();
    chosen.forEach(result -> asked.add(Key.of(result)));
    Set<Key> others = new HashSet<>();
    results.forEach(result -> others.add(Key.of(result)));
    others.removeAll(asked);
    FixLoop loop =
        FixLoop.of(
            text.text().getBytes(UTF_8),
            FixKind.PROPOSED,
            bytes -> {
              CheckReport report =
                  linter.check(Stream.of(new SiteInput(text.shown(base), most -> bytes)));
              return new FixLoop.Checked(
                  report.results().stream()
                      .map(one -> others.contains(Key.of(one)) ? withoutFix(one) : one)
                      .toList(),
                  report.notifications().size());
            });
    return new String(loop.bytes(), UTF_8);
  }

  private static Result withoutFix(Result one) {
    return new Result(
        one.rule(),
        one.level(),
        one.message(),
        one.location(),
        one.logical(),
        one.unit(),
        one.related(),
        one.suppression(),
        one.identities(),
        one.state(),
        null);
  }

  /** Whether any result has a safe fix. */
  boolean anySafe() {
    return results.stream()
        .map(Result::fix)
        .anyMatch(fix -> fix != null && fix.kind() == FixKind.SAFE);
  }

  /** The text after all safe fixes. */
  String afterAllSafe() {
    List<FixedSite> fixed = new ArrayList<>();
    linter.fix(Stream.of(text.input(base)), FixKind.SAFE, fixed::add);
    return fixed.isEmpty() ? text.text() : new String(fixed.get(0).after(), UTF_8);
  }
}
