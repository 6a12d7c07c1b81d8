package org.headhouse.linter.maven;

import java.util.ArrayList;
import java.util.List;
import org.apache.maven.plugin.logging.SystemStreamLog;

/** Keeps what is logged instead of printing it. */
final class RecordingLog extends SystemStreamLog {
  private final List<String> lines = new ArrayList<>();

  /** Each line, after its level. */
  List<String> lines() {
    return List.copyOf(lines);
  }

  @Override
  public void info(CharSequence content) {
    lines.add("info " + content);
  }

  @Override
  public void warn(CharSequence content) {
    lines.add("warn " + content);
  }

  @Override
  public void error(CharSequence error) {
    lines.add("error " + error);
  }
}
