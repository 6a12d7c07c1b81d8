package org.headhouse.linter.command;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.report.ToolVersion;

/** What the command prints about itself. */
final class Help {
  private static final int COLUMN = 29;
  private static final int GOAL_COLUMN = 14;

  private Help() {}

  /** The help of a call without a goal. */
  static List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("Checks site definitions.");
    lines.add("");
    lines.add("  java -jar <this jar> [options]              all sites of a folder");
    lines.add("  java -jar <this jar> [options] [--] <file>… single files, as a hook names them");
    lines.add("  java -jar <this jar> [options] [--name=<file>] -");
    lines.add("                                              one text from the standard input");
    lines.add("  java -jar <this jar> <goal> [options]       one of the goals below");
    lines.add("  java -jar <this jar> <goal> --help          the options of that goal");
    lines.add("");
    for (Goal goal : Goal.values()) {
      lines.add(padded("  " + goal.word(), GOAL_COLUMN) + goal.summary());
    }
    lines.add("");
    addOptions(lines, Goal.CHECK);
    lines.add("");
    lines.add("Named files are checked if their names are those of sites. If the policy or the");
    lines.add("device types are named, all sites of their folder are checked.");
    lines.add("");
    lines.add("Results go to the standard output, everything else to the standard error. The exit");
    lines.add("code is 0 if nothing fails, 1 if results do, 2 if not everything could be checked.");
    return lines;
  }

  /** The help of a goal. */
  static List<String> lines(Goal goal) {
    List<String> lines = new ArrayList<>();
    lines.add("The goal " + goal.word() + " " + goal.summary() + ".");
    lines.add("");
    lines.add("  java -jar <this jar> " + goal.word() + " " + goal.usage());
    lines.add("");
    addOptions(lines, goal);
    String notes = notes(goal);
    if (!notes.isEmpty()) {
      lines.add("");
      notes.lines().forEach(lines::add);
    }
    return lines;
  }

  private static void addOptions(List<String> lines, Goal goal) {
    for (CommandOption option : goal.options()) {
      lines.add(padded("  " + option.form(), COLUMN) + meaning(goal, option));
    }
  }

  private static String notes(Goal goal) {
    return switch (goal) {
      case FIX ->
          """
          Files are written only with --write. If a line was in operation at the revision that is
          compared, fixes that need work at its units are only proposed.
          """;
      case REPORT -> "Files of the same names in the folder are replaced.";
      case CHANGES -> "Give --since, or --before with a folder or file that has the earlier state.";
      case DRAFT ->
          """
          A new site is written. If the site exists, the difference is shown, and written only with
          --write. A list from a visit is named by --visit, in place of --list and --site.
          """;
      case SCHEMA -> "Older schemas of this linter in the folder are replaced, other files never.";
      case COMPLETION ->
          """
          The script is for a command of that name, by default linter, such as this function:

            linter() { java -jar <this jar> "$@"; }
            source <(linter completion)
          """;
      case CHECK, RULES, DIAGNOSE, LSP -> "";
    };
  }

  /** What an option means to a goal. */
  private static String meaning(Goal goal, CommandOption option) {
    return switch (option) {
      case SINCE ->
          switch (goal) {
            case FIX ->
                "the revision of the git repository to compare with; by default the last commit, if"
                    + " there is one";
            case CHANGES -> "the revision of the git repository to compare with";
            default -> option.meaning();
          };
      case OUTPUT_DIRECTORY ->
          switch (goal) {
            case REPORT -> "the folder for the sheets, tables and figures";
            case CHANGES ->
                "the folder for changes.md and changes.json; by default they are not written";
            case SCHEMA -> "the folder for the schemas";
            case DIAGNOSE -> "the folder for diagnosis.json; by default it is not written";
            default -> option.meaning();
          };
      case RULE ->
          goal == Goal.RULES
              ? "the rule to show, in place of <id>; without either, all are listed"
              : option.meaning();
      default -> option.meaning();
    };
  }

  private static String padded(String text, int column) {
    return text + " ".repeat(Math.max(1, column - text.length()));
  }

  static String version() {
    return "Headhouse Linter " + ToolVersion.text().orElse("of unknown version");
  }
}
