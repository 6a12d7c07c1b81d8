package org.headhouse.linter.command;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.goal.ChangesRequest;
import org.headhouse.linter.goal.DiagnoseRequest;
import org.headhouse.linter.goal.DraftChoice;
import org.headhouse.linter.goal.DraftOptions;
import org.headhouse.linter.goal.FixRequest;
import org.headhouse.linter.goal.GoalRequest;
import org.headhouse.linter.goal.ReportRequest;
import org.headhouse.linter.goal.RulesRequest;
import org.headhouse.linter.goal.SchemaRequest;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.run.DiagnosisOutput;
import org.headhouse.linter.run.EnumParameter;
import org.headhouse.linter.run.SitesRequest;
import org.headhouse.linter.run.SlackParameter;
import org.jspecify.annotations.Nullable;

/** Turns arguments into the requests of the goals that the plugin has too. */
final class GoalRequests {
  private final Goal goal;
  private final SiteOptions options;
  private final Arguments arguments;

  private GoalRequests(Goal goal, SiteOptions options) {
    this.goal = goal;
    this.options = options;
    this.arguments = options.arguments();
  }

  /**
   * The request of a goal.
   *
   * @throws UserError where something is missing, or cannot be used
   */
  static GoalRequest of(Goal goal, SiteOptions options) throws UserError {
    return new GoalRequests(goal, options).request();
  }

  private GoalRequest request() throws UserError {
    return switch (goal) {
      case FIX ->
          new FixRequest(
              options.sites(),
              word(CommandOption.FIXES, FixKind.SAFE, FixKind.values(), FixKind::word),
              arguments.get(CommandOption.SINCE),
              arguments.has(CommandOption.WRITE));
      case REPORT ->
          new ReportRequest(
              options.sites(),
              folder("for the sheets"),
              word(CommandOption.UNITS, Measure.METRIC, Measure.values(), Measure::word),
              word(CommandOption.PAPER, Paper.A4, Paper.values(), Paper::word),
              SlackParameter.of(name(CommandOption.SLACK), slack()),
              arguments.has(CommandOption.BUNDLE));
      case CHANGES ->
          ChangesRequest.of(
              options.sites(),
              options.written(CommandOption.OUTPUT_DIRECTORY),
              arguments.get(CommandOption.SINCE),
              options.path(CommandOption.BEFORE),
              slack());
      case DRAFT -> draft();
      case RULES -> new RulesRequest(rule());
      case SCHEMA -> new SchemaRequest(folder("for the schemas"), options.base());
      case DIAGNOSE -> diagnose();
      case CHECK, LSP, COMPLETION -> throw new IllegalArgumentException(goal + " has no request");
    };
  }

  private GoalRequest draft() throws UserError {
    Integer baud = options.number(CommandOption.BAUD, "a number, such as " + DraftOptions.BAUD);
    DraftOptions draft =
        new DraftOptions(
            arguments.get(CommandOption.TITLE),
            arguments.get(CommandOption.READINGS) == null
                ? null
                : arguments.list(CommandOption.READINGS, List.of()),
            baud,
            arguments.get(CommandOption.PARITY),
            arguments.get(CommandOption.GAUGE),
            answer(CommandOption.SHIELDED),
            arguments.get(CommandOption.IMPEDANCE),
            arguments.get(CommandOption.BIAS_SUPPLY));
    return new DraftChoice(
            options.settings(),
            options.path(CommandOption.LIST),
            options.path(CommandOption.VISIT),
            arguments.get(CommandOption.SITE),
            options.path(CommandOption.OUTPUT),
            arguments.has(CommandOption.WRITE),
            draft)
        .request();
  }

  private GoalRequest diagnose() throws UserError {
    if (PipedText.isAsked(arguments)) {
      throw new UserError("- does not go with diagnose: name the file");
    }
    SitesRequest sites = options.sites();
    return new DiagnoseRequest(
        console ->
            new AskedSites(sites, arguments.files(), console)
                .find().stream().map(sites::run).toList(),
        options.base(),
        new DiagnosisOutput(
            arguments.get(CommandOption.AS_FOUND),
            options.written(CommandOption.OUTPUT_DIRECTORY)));
  }

  private @Nullable String rule() throws UserError {
    List<String> named = arguments.files();
    String rule = arguments.get(CommandOption.RULE);
    if (named.size() + (rule == null ? 0 : 1) > 1) {
      throw new UserError("rules shows one page at a time: name one rule, or none for all");
    }
    return named.isEmpty() ? rule : named.get(0);
  }

  private Path folder(String what) throws UserError {
    Path folder = options.written(CommandOption.OUTPUT_DIRECTORY);
    if (folder == null) {
      throw new UserError(
          "there is no folder " + what + ": use " + CommandOption.OUTPUT_DIRECTORY.form());
    }
    return folder;
  }

  private String slack() {
    return arguments.get(CommandOption.SLACK, SlackParameter.USUAL);
  }

  /** An answer, or null where there is none. */
  private @Nullable Boolean answer(CommandOption option) throws UserError {
    String answer = arguments.get(option);
    return answer == null
        ? null
        : EnumParameter.of(name(option), answer, new Boolean[] {true, false}, String::valueOf);
  }

  private <T> T word(CommandOption option, T usual, T[] values, Function<T, String> word)
      throws UserError {
    return EnumParameter.of(name(option), arguments.get(option, word.apply(usual)), values, word);
  }

  private static String name(CommandOption option) {
    return OptionNames.NAMES.of(option.word());
  }
}
