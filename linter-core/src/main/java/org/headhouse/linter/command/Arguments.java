package org.headhouse.linter.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.files.UserError;
import org.jspecify.annotations.Nullable;

/**
 * What the command is called with.
 *
 * @param values of the options that are given
 * @param files that are named
 */
record Arguments(Map<CommandOption, String> values, List<String> files) {
  private static final String END_OF_OPTIONS = "--";

  /**
   * Reads the arguments of a goal.
   *
   * @throws UserError where an option is not one of the goal, or its value is missing
   */
  static Arguments of(List<String> written, String goal) throws UserError {
    Map<CommandOption, String> values = new EnumMap<>(CommandOption.class);
    List<String> files = new ArrayList<>();
    Iterator<String> rest = written.iterator();
    while (rest.hasNext()) {
      String argument = rest.next();
      if (argument.equals(END_OF_OPTIONS)) {
        rest.forEachRemaining(files::add);
      } else if (argument.startsWith("-") && !argument.equals(PipedText.MARK)) {
        option(argument, rest, values, goal);
      } else {
        files.add(argument);
      }
    }
    return new Arguments(values, files);
  }

  private static void option(
      String argument, Iterator<String> rest, Map<CommandOption, String> values, String goal)
      throws UserError {
    int equals = argument.indexOf('=');
    String name = equals < 0 ? argument : argument.substring(0, equals);
    if (!name.startsWith("--")) {
      throw UnknownOption.error(name, goal);
    }
    CommandOption option = CommandOption.of(name.substring(2)).orElse(null);
    if (option == null || !option.goesWith(goal)) {
      throw UnknownOption.error(name, goal);
    }
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

  boolean has(CommandOption flag) {
    return Boolean.parseBoolean(values.get(flag));
  }

  @Nullable String get(CommandOption option) {
    return values.get(option);
  }

  String get(CommandOption option, String otherwise) {
    return values.getOrDefault(option, otherwise);
  }

  /** The values of an option that takes several, separated by commas. */
  List<String> list(CommandOption option, List<String> otherwise) {
    String value = values.get(option);
    return value == null
        ? otherwise
        : Arrays.stream(value.split(",")).filter(one -> !one.isBlank()).toList();
  }
}
