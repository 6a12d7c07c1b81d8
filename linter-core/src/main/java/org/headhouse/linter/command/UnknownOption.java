package org.headhouse.linter.command;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.source.SpellingSuggester;

/** Says what to write in place of an option that a goal does not take. */
final class UnknownOption {
  private static final String OF_THE_PLUGIN = "-Dlinter.";
  private static final Set<String> ONLY_THERE = Set.of("changedOnly", "recheck", "skip");

  private UnknownOption() {}

  /**
   * Why an option is refused.
   *
   * @param written up to its value
   */
  static UserError error(String written, String goal) {
    String word = word(written);
    if (ONLY_THERE.contains(word)) {
      return new UserError(
          "only the goal check of the Maven plugin has the option " + written + ": leave it out");
    }
    Optional<CommandOption> meant = near(word, option -> option.goesWith(goal));
    Optional<CommandOption> other = CommandOption.of(word);
    if (meant.isEmpty() && other.isPresent()) {
      return ofOthers(other.get(), goal);
    }
    String remedy =
        meant
            .or(() -> near(word, option -> true))
            .map(option -> "use " + option.form())
            .orElse("--help lists the options; to name a file, use ./" + written);
    return new UserError("there is no option " + written + ": " + remedy);
  }

  /** The name alone; a list of units is called otherwise in the plugin. */
  private static String word(String written) {
    String word =
        written.startsWith(OF_THE_PLUGIN)
            ? written.substring(OF_THE_PLUGIN.length())
            : written.replaceFirst("^--?", "");
    return word.equals(OptionNames.LIST_OF_PLUGIN) ? CommandOption.LIST.word() : word;
  }

  private static Optional<CommandOption> near(String word, Predicate<CommandOption> which) {
    List<String> words =
        Arrays.stream(CommandOption.values()).filter(which).map(CommandOption::word).toList();
    return SpellingSuggester.suggest(word, words).flatMap(CommandOption::of);
  }

  private static UserError ofOthers(CommandOption option, String goal) {
    List<String> goals = option.goals();
    if (!goal.equals(Goal.CHECK.word())) {
      return new UserError("--" + option.word() + " does not go with " + goal + ": leave it out");
    }
    return new UserError(
        "--"
            + option.word()
            + " works only with "
            + String.join(" or ", goals)
            + ": put "
            + (goals.size() == 1 ? goals.get(0) : "one of them")
            + " first, or leave it out");
  }
}
