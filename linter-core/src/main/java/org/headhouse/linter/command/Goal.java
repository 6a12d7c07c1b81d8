package org.headhouse.linter.command;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.source.SpellingSuggester;
import org.jspecify.annotations.Nullable;

/** What the command does if its first argument says so; a file of such a name is {@code ./fix}. */
enum Goal {
  CHECK("check", "[options] [--] [<file>…]", "checks sites, like a call without a goal", null),
  FIX(
      "fix",
      "[options]",
      "fixes what can be fixed, and shows the difference",
      "name the folder of the sites, or one file, with --sites"),
  REPORT(
      "report",
      "--outputDirectory=<folder> [options]",
      "writes the sheets that people take to each site, tables and figures",
      "name the folder of the sites, or one file, with --sites"),
  CHANGES(
      "changes",
      "--since=<revision> [options]",
      "shows what differs between two states of the sites, and the work in order",
      "name the folder of the sites, or one file, with --sites"),
  DRAFT(
      "draft",
      "--list=<file> --site=<id> [options]",
      "makes a site from a list of its units, or adds what a visit found",
      "name the list with --list=<file>, or with --visit=<file> if it is from a visit"),
  RULES("rules", "[<id>]", "lists the rules, or shows the page of one", null),
  SCHEMA(
      "schema",
      "--outputDirectory=<folder>",
      "writes the JSON Schemas of the three kinds of file, for editors",
      "name the folder with --outputDirectory=<folder>"),
  DIAGNOSE(
      "diagnose",
      "[options] [--] [<file>…]",
      "says which faults agree with readings, and what to measure next",
      null),
  LSP(
      "lsp",
      "[--policy=<file>] [--deviceTypes=<file>]",
      "is the language server, for an editor",
      "the editor says which texts it has; leave them out"),
  COMPLETION(
      "completion",
      "[<name>]",
      "prints a script with which bash completes goals, options and values",
      null);

  private final String word;
  private final String usage;
  private final String summary;
  private final @Nullable String insteadOfFiles;

  /**
   * @param insteadOfFiles what to do where files are named; null where they may be
   */
  Goal(String word, String usage, String summary, @Nullable String insteadOfFiles) {
    this.word = word;
    this.usage = usage;
    this.summary = summary;
    this.insteadOfFiles = insteadOfFiles;
  }

  static Optional<Goal> of(String word) {
    return Arrays.stream(values()).filter(goal -> goal.word.equals(word)).findFirst();
  }

  /** Why a word is refused that is neither a goal nor a file. */
  static UserError unknown(String written) {
    List<String> words = Arrays.stream(values()).map(Goal::word).toList();
    Optional<String> meant =
        written.equals("help") ? Optional.of("--help") : SpellingSuggester.suggest(written, words);
    return new UserError(
        "there is no goal \""
            + written
            + "\": use "
            + meant.orElse("one of " + String.join(", ", words))
            + "; to name a file, use ./"
            + written);
  }

  String word() {
    return word;
  }

  /** What follows it. */
  String usage() {
    return usage;
  }

  /** What it does, in a few words. */
  String summary() {
    return summary;
  }

  /** The options that it takes, in order. */
  List<CommandOption> options() {
    return Arrays.stream(CommandOption.values()).filter(one -> one.goesWith(word)).toList();
  }

  /** Refuses files where it takes none. */
  void requireNoFiles(Arguments arguments) throws UserError {
    if (insteadOfFiles != null && !arguments.files().isEmpty()) {
      throw new UserError(word + " takes no files: " + insteadOfFiles);
    }
  }
}
