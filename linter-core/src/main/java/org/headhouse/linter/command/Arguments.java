package org.headhouse.linter.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.source.SpellingSuggester;
import org.jspecify.annotations.Nullable;

/**
 * What the command is called with.
 *
 * @param values of the options that are given
 * @param files that are named besides
 */
record Arguments(Map<CommandOption, String> values, List<String> files) {
  private static final String END_OF_OPTIONS = "--";
  private static final String OF_THE_PLUGIN = "-Dlinter.";
  private static final Set<String> ONLY_THERE = Set.of("changedOnly", "skip");

  static Arguments of(List<String> written) throws UserError {
    Map<CommandOption, String> values = new EnumMap<>(CommandOption.class);
    List<String> files = new ArrayList<>();
    Iterator<String> rest = written.iterator();
    while (rest.hasNext()) {
      String argument = rest.next();
      if (argument.equals(END_OF_OPTIONS)) {
        rest.forEachRemaining(files::add);
      } else if (argument.startsWith("-") && !argument.equals(PipedText.MARK)) {
        option(argument, rest, values);
      } else {
        files.add(argument);
      }
    }
    return new Arguments(values, files);
  }

  private static void option(
      String argument, Iterator<String> rest, Map<CommandOption, String> values) throws UserError {
    int equals = argument.indexOf('=');
    String name = equals < 0 ? argument : argument.substring(0, equals);
    if (!name.startsWith("--")) {
      throw unknown(name);
    }
    CommandOption option = CommandOption.of(name.substring(2)).orElseThrow(() -> unknown(name));
    String value = equals < 0 ? null : argument.substring(equals + 1);
    put(values, option, option.takesValue() ? needed(option, value, rest) : flag(option, value));
  }

  private static void put(Map<CommandOption, String> values, CommandOption option, String value)
      throws UserError {
    String before = values.put(option, value);
    if (before != null && option.adds()) {
      values.put(option, before + "," + value);
    } else if (before != null) {
      throw new UserError("--" + option.word() + " is given twice: give it once");
    }
  }

  private static String needed(CommandOption option, @Nullable String value, Iterator<String> rest)
      throws UserError {
    String found = value == null && rest.hasNext() ? rest.next() : value;
    if (found == null || found.isEmpty() || (value == null && found.startsWith("--"))) {
      throw new UserError("--" + option.word() + " needs a value: use " + option.form());
    }
    return found;
  }

  private static String flag(CommandOption option, @Nullable String value) throws UserError {
    String found = value == null ? "true" : value;
    if (!List.of("true", "false").contains(found)) {
      throw new UserError(
          "--" + option.word() + " cannot be \"" + value + "\": use " + option.form());
    }
    return found;
  }

  private static UserError unknown(String written) {
    boolean plugin = written.startsWith(OF_THE_PLUGIN);
    String word =
        plugin ? written.substring(OF_THE_PLUGIN.length()) : written.replaceFirst("^--?", "");
    if (ONLY_THERE.contains(word)) {
      return new UserError(
          "only the goal check of the Maven plugin has the option " + written + ": leave it out");
    }
    List<String> words = Arrays.stream(CommandOption.values()).map(CommandOption::word).toList();
    String remedy =
        SpellingSuggester.suggest(word, words)
            .flatMap(CommandOption::of)
            .map(option -> "use " + option.form())
            .orElse("--help lists the options; to name a file, use ./" + written);
    return new UserError("there is no option " + written + ": " + remedy);
  }

  boolean has(CommandOption flag) {
    return Boolean.parseBoolean(values.get(flag));
  }

  @Nullable String get(CommandOption option) {
    return values.get(option);
  }

  /**
   * Refuses options that have no effect.
   *
   * @param what they do not go with
   */
  void allowOnly(String what, Set<CommandOption> allowed) throws UserError {
    for (CommandOption option : values.keySet()) {
      if (!allowed.contains(option)) {
        throw new UserError("--" + option.word() + " does not go with " + what + ": leave it out");
      }
    }
  }

  String get(CommandOption option, String otherwise) {
    return values.getOrDefault(option, otherwise);
  }

  /** The values of an option that takes several, apart by commas. */
  List<String> list(CommandOption option, List<String> otherwise) {
    String value = values.get(option);
    return value == null
        ? otherwise
        : Arrays.stream(value.split(",")).filter(one -> !one.isBlank()).toList();
  }
}
