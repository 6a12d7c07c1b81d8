package org.headhouse.linter.report;

import java.util.regex.Pattern;

/**
 * Breaks the marks by which servers that run builds know commands in a log: two colons at the start
 * of a line, and two number signs, perhaps a word, and a bracket anywhere. A file or its name could
 * otherwise set variables of the build.
 */
final class LogCommands {
  private static final Pattern MARK = Pattern.compile("^(\\s*:):|(#)#(?=[A-Za-z]*\\[)");
  private static final char REPLACEMENT = '\uFFFD';

  private LogCommands() {}

  /** The line with the second sign of each mark replaced, so that columns stay. */
  static String broken(String line) {
    return line.contains("::") || line.contains("##")
        ? MARK.matcher(line)
            .replaceAll(
                mark -> (mark.group(1) == null ? mark.group(2) : mark.group(1)) + REPLACEMENT)
        : line;
  }
}
