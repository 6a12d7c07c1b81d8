package org.headhouse.linter.maven;

import org.apache.maven.plugin.logging.Log;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.Console;

/** The log of the build as a console. */
final class BuildConsole implements Console {
  private final Log log;

  BuildConsole(Log log) {
    this.log = log;
  }

  @Override
  public void found(Level level, String line) {
    print(level, line);
  }

  // The server that runs the build knows its commands at the start of a line only.
  @SuppressWarnings("SystemOut")
  @Override
  public void plain(String line) {
    System.out.println(line);
  }

  @Override
  public void report(Level level, String line) {
    print(level, line);
  }

  private void print(Level level, String text) {
    String line = TextReport.printable(text);
    switch (level) {
      case ERROR -> log.error(line);
      case WARNING -> log.warn(line);
      case NOTE, NONE -> log.info(line);
    }
  }
}
