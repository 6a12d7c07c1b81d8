package org.headhouse.linter.command;

import java.io.InputStream;
import java.io.PrintStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.FoundSites;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.goal.ValidSettingsGuard;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.DiagnosisOutput;
import org.headhouse.linter.run.LinterMaker;
import org.headhouse.linter.run.Outcome;
import org.headhouse.linter.run.SiteRun;
import org.headhouse.linter.run.SitesRequest;

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
      case DIAGNOSE -> code(diagnose());
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

  private Outcome diagnose() throws UserError {
    Arguments arguments = options.arguments();
    if (PipedText.isAsked(arguments)) {
      throw new UserError("- does not go with diagnose: name the file");
    }
    DiagnosisOutput output =
        new DiagnosisOutput(
            arguments.get(CommandOption.AS_FOUND), options.written(CommandOption.OUTPUT_DIRECTORY));
    Map<SiteRun, SiteLinter> runs = new LinkedHashMap<>();
    SitesRequest request = options.sites();
    for (FoundSites found : new AskedSites(request, arguments.files(), console).find()) {
      SiteRun run = request.run(found);
      run.reportSettings(console);
      SiteLinter linter = linters.make(run.builder().withoutBaseline());
      Outcome settings = ValidSettingsGuard.check(linter, console);
      if (!settings.isGood()) {
        return settings;
      }
      runs.put(run, linter);
    }
    List<Notification> notifications = output.write(runs, options.base(), console);
    new ConsoleReport(console, Level.NOTE).print(notifications);
    return Outcome.of(notifications);
  }
}
