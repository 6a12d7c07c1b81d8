package org.headhouse.linter.maven;

import java.util.function.UnaryOperator;
import org.apache.maven.plugin.logging.Log;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.report.StyledLine;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.Console;

/** The log of the build as a console. */
final class BuildConsole implements Console {
  private final Log log;
  private final UnaryOperator<String> goals;
  private final boolean inColour;

  /**
   * @param goals what to type for another goal
   * @param inColour whether the log shows colours
   */
  BuildConsole(Log log, UnaryOperator<String> goals, boolean inColour) {
    this.log = log;
    this.goals = goals;
    this.inColour = inColour;
  }

  @Override
  public void found(Level level, StyledLine line) {
    print(level, line.shown(inColour));
  }

  @Override
  public ParameterNames called() {
    return PluginParameters.NAMES;
  }

  @Override
  public String rulePageCall(String rule) {
    return goals.apply("rules") + " -Dlinter.rule=" + rule;
  }

  // The server that runs the build knows its commands at the start of a line only.
  @SuppressWarnings("SystemOut")
  @Override
  public void plain(String line) {
    System.out.println(line);
  }

  @Override
  public void report(Level level, String line) {
    print(level, TextReport.printable(line));
  }

  private void print(Level level, String line) {
    switch (level) {
      case ERROR -> log.error(line);
      case WARNING -> log.warn(line);
      case NOTE, NONE -> log.info(line);
    }
  }
}
