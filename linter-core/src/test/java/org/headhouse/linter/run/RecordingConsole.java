package org.headhouse.linter.run;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.report.StyledLine;
import org.headhouse.linter.result.Level;

/** Keeps the lines instead of printing it. */
final class RecordingConsole implements Console {
  private final List<String> lines = new ArrayList<>();

  /** Each line, after what it is about and its level. */
  List<String> lines() {
    return List.copyOf(lines);
  }

  @Override
  public void found(Level level, StyledLine line) {
    lines.add("found " + level.word() + " " + line.text());
  }

  @Override
  public void plain(String line) {
    lines.add("plain " + line);
  }

  @Override
  public void report(Level level, String line) {
    lines.add("report " + level.word() + " " + line);
  }

  @Override
  public ParameterNames called() {
    return "--"::concat;
  }

  @Override
  public String rulePageCall(String rule) {
    return "page " + rule;
  }
}
