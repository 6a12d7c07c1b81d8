package org.headhouse.linter.command;

import java.util.Map;

/** Whether the command writes in colours: never into a file or a pipe. */
final class Colours {
  private static final String NO_COLOUR = "NO_COLOR";
  private static final String TERMINAL = "TERM";

  private Colours() {}

  /** What the environment of this program asks for. */
  static boolean areWanted() {
    return areWanted(System.console() != null, System.getenv());
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
