package org.headhouse.linter.command;

import java.io.PrintStream;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.report.StyledLine;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.Console;

/** Results go to one stream, all else to the other. */
final class StreamConsole implements Console {
  private final PrintStream out;
  private final PrintStream err;

  private final boolean inColour;

  /**
   * @param inColour whether results go to a terminal that shows colours
   */
  StreamConsole(PrintStream out, PrintStream err, boolean inColour) {
    this.inColour = inColour;
    this.out = out;
    this.err = err;
  }

  @Override
  public void found(Level level, StyledLine line) {
    out.println(line.shown(inColour));
  }

  @Override
  public void plain(String line) {
    out.println(line);
  }

  @Override
  public void report(Level level, String line) {
    // Keeps the order of lines where both streams go to one terminal.
    out.flush();
    String printable = TextReport.printable(line);
    err.println(
        level == Level.NOTE || level == Level.NONE ? printable : level.word() + ": " + printable);
    err.flush();
  }

  @Override
  public ParameterNames called() {
    return OptionNames.NAMES;
  }

  @Override
  public String rulePageCall(String rule) {
    return "java -jar <this jar> " + CommandOption.RULE.form(rule);
  }
}
