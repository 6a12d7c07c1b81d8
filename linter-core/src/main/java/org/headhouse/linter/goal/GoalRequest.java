package org.headhouse.linter.goal;

import org.headhouse.linter.files.UserError;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.LinterMaker;
import org.headhouse.linter.run.Outcome;

/** What a goal is asked for, with parameters that can be used: immutable, and run once. */
public interface GoalRequest {
  /**
   * Does the work of the goal.
   *
   * @throws UserError where the work cannot be done
   */
  Outcome run(Console console, LinterMaker linters) throws UserError;
}
