package org.headhouse.linter.command;

import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.FoundSites;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.files.SiteNames;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.RepositoryPaths;
import org.headhouse.linter.report.RunDetails;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.rules.RulePages;
import org.headhouse.linter.run.CheckOutput;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.DiagnosisOutput;
import org.headhouse.linter.run.EnumParameter;
import org.headhouse.linter.run.LinterFactory;
import org.headhouse.linter.run.Outcome;
import org.headhouse.linter.run.OutputForm;
import org.headhouse.linter.run.OutputFormat;
import org.headhouse.linter.run.RulePage;
import org.headhouse.linter.run.SettingsRequest;
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

  static final ParameterNames CALLED = "--"::concat;

  /** The first argument that asks for a diagnosis; to name a file, use ./diagnose. */
  private static final String DIAGNOSE = "diagnose";

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
      String first = written.isEmpty() ? "" : written.get(0);
      boolean named = first.equals(DIAGNOSE) || first.equals(EDITOR);
      Arguments arguments = Arguments.of(named ? written.subList(1, written.size()) : written);
      if (arguments.has(CommandOption.HELP)) {
        Help.lines().forEach(out::println);
        return CLEAN;
      }
      if (arguments.has(CommandOption.VERSION)) {
        out.println(Help.version());
        return CLEAN;
      }
      String rule = arguments.get(CommandOption.RULE);
      if (rule != null) {
        RulePage.of(rule, linter(SiteLinter.builder())).lines().forEach(out::println);
        return CLEAN;
      }
      return switch (first) {
        case DIAGNOSE -> diagnose(arguments);
        case EDITOR -> new EditorCall(request(arguments).settings(), in, out).serve(arguments);
        default -> check(arguments);
      };
    } catch (UserError error) {
      return trouble(String.valueOf(error.getMessage()));
    } catch (InvalidPathException noName) {
      return trouble(String.valueOf(UserError.of(noName).getMessage()));
    } catch (RuntimeException | Error failure) {
      return trouble("the tool failed, please report it: " + failure);
    }
  }

  private int trouble(String text) {
    console.report(Level.ERROR, text);
    return TROUBLE;
  }

  private int check(Arguments arguments) throws UserError {
    if (arguments.get(CommandOption.AS_FOUND) != null) {
      throw new UserError(
          "--asFound works only with diagnose: put diagnose first, or leave it out");
    }
    SitesRequest request = request(arguments);
    CheckOutput output = output(arguments, request);
    if (PipedText.isAsked(arguments)) {
      PipedText text = PipedText.of(arguments, base, in);
      SiteLinter.Builder builder = text.builder(request.settings(), console).shownFrom(base.path());
      CheckReport report =
          linter(withBaseline(builder, arguments.get(CommandOption.BASELINE)))
              .check(Stream.of(text.input()));
      return code(output.write(report, console, base));
    }
    List<CheckReport> reports = new ArrayList<>();
    String since = arguments.get(CommandOption.SINCE);
    AskedSites asked = new AskedSites(request, arguments.files(), console);
    for (FoundSites found : asked.find()) {
      SiteRun run = request.run(found);
      SiteLinter.Builder builder = builder(run, arguments.get(CommandOption.BASELINE));
      reports.add(
          since == null
              ? run.check(linter(builder), console)
              : new ComparingCheck(run, asked.areAll(found), since)
                  .check(builder, Command::linter, console));
    }
    return code(output.write(CheckReports.together(reports), console, base));
  }

  private int diagnose(Arguments arguments) throws UserError {
    if (arguments.get(CommandOption.SINCE) != null) {
      throw new UserError("--since does not go with diagnose, which looks at one state of a site");
    }
    if (PipedText.isAsked(arguments)) {
      throw new UserError("- does not go with diagnose: name the file");
    }
    DiagnosisOutput output =
        new DiagnosisOutput(arguments.get(CommandOption.AS_FOUND), folder(arguments));
    Map<SiteRun, SiteLinter> runs = new LinkedHashMap<>();
    SitesRequest request = request(arguments);
    for (FoundSites found : new AskedSites(request, arguments.files(), console).find()) {
      SiteRun run = request.run(found);
      run.reportSettings(console);
      SiteLinter linter = linter(run.builder().withoutBaseline());
      CheckReport settings = linter.check(Stream.empty());
      new ConsoleReport(console, Level.NOTE).printFound(settings);
      Outcome unusable = Outcome.of(settings, Level.ERROR);
      if (!unusable.failed().isEmpty() || !unusable.toolErrors().isEmpty()) {
        return code(unusable);
      }
      runs.put(run, linter);
    }
    List<Notification> notifications = output.write(runs, console);
    new ConsoleReport(console, Level.NOTE).print(notifications);
    return code(Outcome.of(notifications));
  }

  private @Nullable Path folder(Arguments arguments) {
    String folder = arguments.get(CommandOption.OUTPUT_DIRECTORY);
    return folder == null ? null : base.path().resolve(folder);
  }

  private CheckOutput output(Arguments arguments, SitesRequest request) throws UserError {
    return new CheckOutput(
        level(arguments, CommandOption.FAIL_LEVEL, Level.ERROR),
        level(arguments, CommandOption.PRINT_LEVEL, Level.NOTE),
        folder(arguments),
        new OutputForm(
            EnumParameter.of(
                CALLED.of(CommandOption.FORMAT.word()),
                arguments.get(CommandOption.FORMAT, OutputFormat.TEXT.word()),
                OutputFormat.values(),
                OutputFormat::word),
            arguments.has(CommandOption.OPEN_RESULTS),
            false),
        details(request.settings().sites()));
  }

  private RunDetails details(Path sites) {
    RepositoryPaths paths = RepositoryPaths.around(sites, base.path());
    String place = paths.of(base.shown(sites));
    return new RunDetails(paths, RunDetails.id(place, "command"), RulePages::text);
  }

  private static Level level(Arguments arguments, CommandOption option, Level otherwise)
      throws UserError {
    String word = arguments.get(option, otherwise.word());
    return EnumParameter.of(CALLED.of(option.word()), word, Level.values(), Level::word);
  }

  private SitesRequest request(Arguments arguments) throws UserError {
    int threads = SitesRequest.threads(number(arguments.get(CommandOption.THREADS)), CALLED);
    return new SitesRequest(
        new SettingsRequest(
            base.path().resolve(arguments.get(CommandOption.SITES, "sites")).normalize(),
            path(arguments.get(CommandOption.POLICY)),
            path(arguments.get(CommandOption.DEVICE_TYPES)),
            base,
            CALLED),
        arguments.list(CommandOption.INCLUDES, SiteNames.USUAL),
        arguments.list(CommandOption.EXCLUDES, List.of()),
        arguments.has(CommandOption.ALLOW_EMPTY),
        threads);
  }

  private @Nullable Path path(@Nullable String written) {
    return written == null ? null : base.path().resolve(written).normalize();
  }

  private static int code(Outcome outcome) {
    if (!outcome.failed().isEmpty()) {
      return FAILED;
    }
    return outcome.toolErrors().isEmpty() ? CLEAN : TROUBLE;
  }

  private SiteLinter.Builder builder(SiteRun run, @Nullable String baseline) {
    run.reportSettings(console);
    return withBaseline(run.builder(), baseline);
  }

  private SiteLinter.Builder withBaseline(SiteLinter.Builder builder, @Nullable String baseline) {
    return baseline == null ? builder : builder.baseline(base.path().resolve(baseline));
  }

  private static SiteLinter linter(SiteLinter.Builder builder) throws UserError {
    return LinterFactory.build(
        builder,
        Command.class.getClassLoader(),
        "on the class path",
        "correct the name, or make it with the Maven plugin's goal baseline");
  }

  private static @Nullable Integer number(@Nullable String written) throws UserError {
    try {
      return written == null ? null : Integer.valueOf(written);
    } catch (NumberFormatException noNumber) {
      throw new UserError("--threads cannot be \"" + written + "\": use 1 or more", noNumber);
    }
  }
}
