package org.headhouse.linter.fix;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.result.AppliedFix;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Result;

/**
 * Fixes one file in rounds until nothing more can be fixed.
 *
 * <p>A fix is kept if its own result is gone after it and no new one has come; one that overlaps
 * another waits for the next round. Each round leaves fewer results, so there is a last one. In a
 * file with very many overlapping fixes, some results stay.
 */
public final class FixLoop {
  private final List<AppliedFix> applied = new ArrayList<>();
  private State state;

  /** Checks bytes as the file that is fixed. */
  @FunctionalInterface
  public interface Checker {
    /** What a check of the bytes finds. */
    Checked check(byte[] bytes);
  }

  /**
   * What a check finds.
   *
   * @param notifications how often the tool itself could not do something
   * @param onChanges the rules that compare with an earlier state: what they report of a fix is
   *     what a proposed fix is for, and holds none back
   */
  public record Checked(List<Result> results, int notifications, Set<String> onChanges) {
    public Checked {
      results = List.copyOf(results);
      onChanges = Set.copyOf(onChanges);
    }

    /** Where nothing is compared. */
    public Checked(List<Result> results, int notifications) {
      this(results, notifications, Set.of());
    }
  }

  private FixLoop(State state) {
    this.state = state;
  }

  /** Fixes bytes with the fixes of a kind and those that are safer. */
  public static FixLoop of(byte[] bytes, FixKind asked, Checker checker) {
    CheckBudget checks = new CheckBudget(checker);
    FixLoop loop = new FixLoop(State.of(bytes.clone(), checks));
    int step = 0;
    List<Round.Step> steps = new Round(loop.state, asked, checks).steps();
    while (!steps.isEmpty()) {
      for (Round.Step one : steps) {
        step++;
        for (Result result : one.fixed()) {
          loop.add(step, result);
        }
        loop.state = one.after();
      }
      steps = checks.areLeft() ? new Round(loop.state, asked, checks).steps() : List.of();
    }
    return loop;
  }

  private void add(int step, Result result) {
    Fix fix = result.fix();
    if (fix != null) {
      applied.add(new AppliedFix(step, result, fix));
    }
  }

  /** The bytes in the end. */
  public byte[] bytes() {
    return state.bytes().clone();
  }

  /** What was applied, step by step in the order of the file. */
  public List<AppliedFix> applied() {
    return List.copyOf(applied);
  }

  /** What a check of the bytes finds in the end. */
  public Checked remaining() {
    return state.checked();
  }
}
