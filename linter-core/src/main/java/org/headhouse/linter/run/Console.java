package org.headhouse.linter.run;

import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.report.StyledLine;
import org.headhouse.linter.result.Level;

/**
 * Where the lines of a run go, each with how severe it is. A line may hold the name of a file, and
 * with it any character: whoever prints a line makes it printable.
 */
public interface Console {
  /** A line about the sites: results, and their summary. */
  void found(Level level, StyledLine line);

  /** Such a line without colours. */
  default void found(Level level, String line) {
    found(level, StyledLine.plain(line));
  }

  /**
   * A line for another program, as it is: whoever makes it sees to it that nothing in it is taken
   * for a command.
   */
  void plain(String line);

  /** A line about the run itself: what it reads and writes, and why it cannot go on. */
  void report(Level level, String line);

  /** How the user writes parameters. */
  ParameterNames called();

  /** What the user types to read the page of a rule. */
  String rulePageCall(String rule);
}
