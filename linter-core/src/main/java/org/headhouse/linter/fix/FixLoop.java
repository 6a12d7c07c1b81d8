package org.headhouse.linter.fix;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.result.AppliedFix;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Result;

/**
 * Mends one file in rounds until nothing more can be mended.
 *
 * <p>What is kept takes its own result away and leaves no new one; a fix that was in the way of
 * another waits for the next round. Each round leaves fewer results, so there is a last one. Of a
 * file with ever so many that are in the way of each other, some stay unmended.
 */
public final class FixLoop {
  private final List<AppliedFix> applied = new ArrayList<>();
  private State state;

  /** Checks bytes as the file that is mended. */
  @FunctionalInterface
  public interface Checker {
    /** What is to be told of the bytes. */
    Checked check(byte[] bytes);
  }

  /**
   * What a check tells.
   *
   * @param troubles how many troubles the tool itself had
   */
  public record Checked(List<Result> results, int troubles) {
    public Checked {
      results = List.copyOf(results);
    }
  }

  private FixLoop(State state) {
    this.state = state;
  }

  /** Mends bytes with the fixes of a kind and those that are safer. */
  public static FixLoop of(byte[] bytes, FixKind asked, Checker checker) {
    CheckBudget checks = new CheckBudget(checker, bytes.length);
    FixLoop mending = new FixLoop(State.of(bytes.clone(), checks));
    int step = 0;
    List<Round.Step> steps = new Round(mending.state, asked, checks).steps();
    while (!steps.isEmpty()) {
      for (Round.Step one : steps) {
        step++;
        for (Result result : one.mended()) {
          mending.add(step, result);
        }
        mending.state = one.after();
      }
      steps = new Round(mending.state, asked, checks).steps();
    }
    return mending;
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

  /** What is to be told of the bytes in the end. */
  public Checked remaining() {
    return state.checked();
  }
}
