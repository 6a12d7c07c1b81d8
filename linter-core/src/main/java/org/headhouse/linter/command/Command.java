package org.headhouse.linter.command;

import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.FoundSites;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.RepositoryPaths;
import org.headhouse.linter.report.RunDetails;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.rules.RulePages;
import org.headhouse.linter.run.CheckOutput;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.EnumParameter;
import org.headhouse.linter.run.LinterFactory;
import org.headhouse.linter.run.Outcome;
import org.headhouse.linter.run.OutputForm;
import org.headhouse.linter.run.OutputFormat;
import org.headhouse.linter.run.Refusal;
import org.headhouse.linter.run.RulePage;
import org.headhouse.linter.run.SiteRun;
import org.headhouse.linter.run.SitesRequest;
import org.jspecify.annotations.Nullable;

/** One call of the command, from its arguments to its exit code. */
final class Command {
  /** Nothing fails. */
  static final int CLEAN = 0;

  /** Results reach the level that fails. */
  static final int FAILED = 1;

  /** The command could not do its work. */
  static final int TROUBLE = 2;

  /** The goal of a call that names none. */
  private static final String CHECK = "check";

  /** The first argument that asks for the language server; a file of that name is ./lsp. */
  static final String EDITOR = "lsp";

  private final InputStream in;
  private final PrintStream out;
  private final Console console;
  private final BaseFolder base;

  /**
   * @param in for a text that is piped, and for an editor
   * @param out for what is found
   * @param err for all else
   * @param folder that the command is called in
   * @param inColour whether what is found goes to a terminal that shows colours
   */
  Command(InputStream in, PrintStream out, PrintStream err, Path folder, boolean inColour) {
    this.in = in;
    this.out = out;
    this.console = new StreamConsole(out, err, inColour);
    this.base = new BaseFolder(folder);
  }

  // A failure of the tool must not pass for a broken site, which is what Java's own exit code says.
  @SuppressWarnings("IllegalCatch")
  int run(List<String> written) {
    try {
      Goal goal = goal(written.isEmpty() ? "" : written.get(0));
      Arguments arguments =
          goal == null
              ? Arguments.of(written, CHECK)
              : Arguments.of(written.subList(1, written.size()), goal.word());
      if (arguments.has(CommandOption.HELP)) {
        (goal == null ? Help.lines() : Help.lines(goal)).forEach(out::println);
        return CLEAN;
      }
      if (arguments.has(CommandOption.VERSION)) {
        out.println(Help.version());
        return CLEAN;
      }
      SiteOptions options = new SiteOptions(arguments, base);
      if (goal != null && goal != Goal.CHECK) {
        return new GoalDispatch(goal, options, console, Command::linter).run(in, out);
      }
      if (goal == null && !written.contains("--")) {
        refuseMisplaced(arguments.files());
      }
      String rule = arguments.get(CommandOption.RULE);
      if (rule != null) {
        requireAlone(arguments);
        RulePage.of(rule, linter(SiteLinter.builder())).lines().forEach(out::println);
        return CLEAN;
      }
      return check(options);
    } catch (UserError error) {
      return trouble(String.valueOf(error.getMessage()));
    } catch (InvalidPathException noName) {
      return trouble(String.valueOf(UserError.of(noName).getMessage()));
    } catch (RuntimeException | Error failure) {
      return trouble("the tool failed, please report it: " + failure);
    }
  }

  /** Whether an argument can be the name of a goal, and hardly that of a site. */
  private static boolean isWord(String argument) {
    for (int i = 0; i < argument.length(); i++) {
      if (!Character.isLetter(argument.charAt(i))) {
        return false;
      }
    }
    return !argument.isEmpty();
  }

  /** The goal that the first argument names, or null where it names a file. */
  private @Nullable Goal goal(String first) throws UserError {
    if (!isWord(first)) {
      return null;
    }
    Goal goal = Goal.of(first).orElse(null);
    if (goal == null && isNoFile(first)) {
      throw Goal.unknown(first);
    }
    return goal;
  }

  private boolean isNoFile(String name) {
    return Files.notExists(base.path().resolve(name), LinkOption.NOFOLLOW_LINKS);
  }

  /** A goal that comes too late is not a file that does not exist. */
  private void refuseMisplaced(List<String> files) throws UserError {
    for (String file : files) {
      if (isWord(file) && isNoFile(file) && Goal.of(file).isPresent()) {
        throw new UserError(
            "\""
                + file
                + "\" is not the first argument: put the goal first; to name a file, use ./"
                + file);
      }
    }
  }

  /** Whoever names sites as well expects them to be checked, and none is. */
  private static void requireAlone(Arguments rule) throws UserError {
    if (rule.values().size() > 1 || !rule.files().isEmpty()) {
      throw new UserError("--rule shows a page, and checks nothing: give it alone");
    }
  }

  private int trouble(String text) {
    text.lines().forEach(line -> console.report(Level.ERROR, line));
    return TROUBLE;
  }

  private int check(SiteOptions options) throws UserError {
    Arguments arguments = options.arguments();
    SitesRequest request = options.sites();
    CheckOutput output = output(options, request);
    if (PipedText.isAsked(arguments)) {
      PipedText text = PipedText.of(arguments, base, in);
      SiteLinter.Builder builder = text.builder(request.settings(), console).shownFrom(base.path());
      CheckReport report = linter(withBaseline(builder, options)).check(Stream.of(text.input()));
      return code(output.write(report, console, base), console);
    }
    List<CheckReport> reports = new ArrayList<>();
    String since = arguments.get(CommandOption.SINCE);
    AskedSites asked = new AskedSites(request, arguments.files(), console);
    for (FoundSites found : asked.find()) {
      SiteRun run = request.run(found);
      run.reportSettings(console);
      SiteLinter.Builder builder = withBaseline(run.builder(), options);
      reports.add(
          since == null
              ? run.check(linter(builder), console)
              : new ComparingCheck(run, asked.areAll(found), since)
                  .check(builder, Command::linter, console));
    }
    return code(output.write(CheckReports.together(reports), console, base), console);
  }

  private CheckOutput output(SiteOptions options, SitesRequest request) throws UserError {
    Arguments arguments = options.arguments();
    Path folder = options.written(CommandOption.OUTPUT_DIRECTORY);
    if (folder == null && arguments.has(CommandOption.OPEN_RESULTS)) {
      throw new UserError(
          "there is no folder for the open results: use " + CommandOption.OUTPUT_DIRECTORY.form());
    }
    return new CheckOutput(
        level(arguments, CommandOption.FAIL_LEVEL, Level.ERROR),
        level(arguments, CommandOption.PRINT_LEVEL, Level.NOTE),
        folder,
        new OutputForm(format(arguments), arguments.has(CommandOption.OPEN_RESULTS), false),
        details(request.settings().sites()));
  }

  private static OutputFormat format(Arguments arguments) throws UserError {
    String word = arguments.get(CommandOption.FORMAT);
    return word == null
        ? OutputFormat.TEXT
        : EnumParameter.of(
            OptionNames.NAMES.of(CommandOption.FORMAT.word()),
            word,
            OutputFormat.values(),
            OutputFormat::word);
  }

  private RunDetails details(Path sites) {
    RepositoryPaths paths = RepositoryPaths.around(sites, base.path());
    String place = paths.of(base.shown(sites));
    return new RunDetails(paths, RunDetails.id(place, "command"), RulePages::text);
  }

  private static Level level(Arguments arguments, CommandOption option, Level otherwise)
      throws UserError {
    String word = arguments.get(option);
    return word == null
        ? otherwise
        : EnumParameter.of(OptionNames.NAMES.of(option.word()), word, Level.values(), Level::word);
  }

  /** The exit code of an outcome. Prints why a list is refused; its faults are printed already. */
  static int code(Outcome outcome, Console console) {
    Refusal refusal = outcome.refusal();
    if (refusal != null) {
      console.report(Level.ERROR, refusal.what());
    }
    if (refusal != null || !outcome.failed().isEmpty()) {
      return FAILED;
    }
    return outcome.toolErrors().isEmpty() ? CLEAN : TROUBLE;
  }

  private SiteLinter.Builder withBaseline(SiteLinter.Builder builder, SiteOptions options) {
    Path baseline = options.written(CommandOption.BASELINE);
    return baseline == null ? builder : builder.baseline(baseline);
  }

  private static SiteLinter linter(SiteLinter.Builder builder) throws UserError {
    return LinterFactory.build(
        builder,
        Command.class.getClassLoader(),
        "on the class path",
        "correct the name, or make it with the Maven plugin's goal baseline");
  }
}
