package org.headhouse.linter.command;

import java.io.Console;
import java.util.Map;

/** Whether the command writes in colours: never into a file or a pipe. */
final class Colours {
  private static final String NO_COLOUR = "NO_COLOR";
  private static final String TERMINAL = "TERM";

  private Colours() {}

  /** What the environment of this program asks for. */
  static boolean areWanted() {
    Map<String, String> environment = System.getenv();
    return areWanted(true, environment) && areWanted(isTerminal(), environment);
  }

  /** From Java 22 on there is a console without a terminal too, and a method that says so. */
  @SuppressWarnings("SystemConsoleNull")
  private static boolean isTerminal() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
    } catch (NoSuchMethodException older) {
      return true;
    } catch (ReflectiveOperationException unknown) {
      return false;
    }
  }

  /**
   * What an environment asks for. The variable NO_COLOR, of any value but an empty one, is an
   * informal standard: https://no-color.org.
   *
   * @param terminal whether input and output are a terminal
   */
  static boolean areWanted(boolean terminal, Map<String, String> environment) {
    String kind = environment.getOrDefault(TERMINAL, "dumb");
    return terminal
        && !kind.isEmpty()
        && !kind.equals("dumb")
        && environment.getOrDefault(NO_COLOUR, "").isEmpty();
  }
}
