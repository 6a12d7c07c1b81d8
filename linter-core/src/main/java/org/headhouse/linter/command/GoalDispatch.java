package org.headhouse.linter.command;

import java.io.InputStream;
import java.io.PrintStream;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.LinterMaker;
import org.headhouse.linter.run.Outcome;

/**
 * A call of a goal other than check. A class of its own, so that a check loads none of the others.
 */
record GoalDispatch(Goal goal, SiteOptions options, Console console, LinterMaker linters) {

  /** Does the work of the goal. */
  int run(InputStream in, PrintStream out) throws UserError {
    goal.requireNoFiles(options.arguments());
    return switch (goal) {
      case LSP -> new EditorCall(options.settings(), in, out).serve();
      case COMPLETION -> {
        out.print(CompletionScript.of(options.arguments().files(), linters));
        yield Command.CLEAN;
      }
      default -> code(GoalRequests.of(goal, options).run(console, linters));
    };
  }

  /** Only policy and device types can fail a goal that is no check. */
  private int code(Outcome outcome) {
    if (!outcome.failed().isEmpty()) {
      console.report(
          Level.ERROR,
          "nothing is done while the policy or the device types have an error: fix that first");
    }
    return Command.code(outcome, console);
  }
}
