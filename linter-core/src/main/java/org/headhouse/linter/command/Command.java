package org.headhouse.linter.command;

import java.io.PrintStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.FoundSites;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.Levels;
import org.headhouse.linter.run.LinterFactory;
import org.headhouse.linter.run.Outcome;
import org.headhouse.linter.run.ProgressLines;
import org.headhouse.linter.run.ResultFiles;
import org.headhouse.linter.run.SiteRun;
import org.jspecify.annotations.Nullable;

/** One call of the command, from its arguments to its exit code. */
final class Command {
  /** Nothing fails. */
  static final int CLEAN = 0;

  /** Results reach the level that fails. */
  static final int FAILED = 1;

  /** Something was in the way. */
  static final int TROUBLE = 2;

  private final PrintStream out;
  private final Console console;
  private final BaseFolder base;

  /**
   * @param out for what is found
   * @param err for all else
   * @param folder that the command is called in
   */
  Command(PrintStream out, PrintStream err, Path folder) {
    this.out = out;
    this.console = new StreamConsole(out, err);
    this.base = new BaseFolder(folder);
  }

  // A failure of the tool must not pass for a broken site, which is what Java's own exit code says.
  @SuppressWarnings("IllegalCatch")
  int run(List<String> written) {
    try {
      Arguments arguments = Arguments.of(written);
      if (arguments.has(CommandOption.HELP)) {
        Help.lines().forEach(out::println);
        return CLEAN;
      }
      if (arguments.has(CommandOption.VERSION)) {
        out.println(Help.version());
        return CLEAN;
      }
      return check(arguments);
    } catch (UserError trouble) {
      return trouble(String.valueOf(trouble.getMessage()));
    } catch (InvalidPathException noName) {
      return trouble(String.valueOf(UserError.of(noName).getMessage()));
    } catch (RuntimeException | Error failure) {
      return trouble("the tool failed, please report it: " + failure);
    }
  }

  private int trouble(String text) {
    console.tell(Level.ERROR, text);
    return TROUBLE;
  }

  private int check(Arguments arguments) throws UserError {
    Level failing =
        Levels.of("--failLevel", arguments.get(CommandOption.FAIL_LEVEL, Level.ERROR.word()));
    Level printed =
        Levels.of("--printLevel", arguments.get(CommandOption.PRINT_LEVEL, Level.NOTE.word()));
    int threads = SiteRun.threads(number(arguments.get(CommandOption.THREADS)), "--"::concat);
    List<CheckReport> reports = new ArrayList<>();
    for (FoundSites found : new AskedSites(arguments, base, console).find()) {
      reports.add(check(found, arguments, threads));
    }
    CheckReport report = CheckReports.together(reports);
    ConsoleReport told = new ConsoleReport(console, printed);
    told.print(report);
    told.printAbsent(report.absent());
    String output = arguments.get(CommandOption.OUTPUT_DIRECTORY);
    if (output != null) {
      Path folder = base.path().resolve(output);
      ResultFiles.write(folder, report, failing);
      console.tell(Level.NOTE, "Results are in " + base.shown(folder));
    }
    return code(Outcome.of(report, failing));
  }

  private static int code(Outcome outcome) {
    if (!outcome.failed().isEmpty()) {
      return FAILED;
    }
    return outcome.isClean() ? CLEAN : TROUBLE;
  }

  private CheckReport check(FoundSites found, Arguments arguments, int threads) throws UserError {
    SiteRun run = new SiteRun(found, base);
    run.tellSettings(console);
    SiteLinter.Builder builder = run.builder(threads);
    String baseline = arguments.get(CommandOption.BASELINE);
    if (baseline != null) {
      builder.baseline(base.path().resolve(baseline));
    }
    SiteLinter linter =
        LinterFactory.build(
            builder,
            Command.class.getClassLoader(),
            "on the class path",
            "correct the name, or make it with the Maven plugin's goal baseline");
    return linter.check(run.stream(), new ProgressLines(console, found.files().size()));
  }

  private static @Nullable Integer number(@Nullable String written) throws UserError {
    try {
      return written == null ? null : Integer.valueOf(written);
    } catch (NumberFormatException noNumber) {
      throw new UserError("--threads cannot be \"" + written + "\": write 1 or more", noNumber);
    }
  }
}
