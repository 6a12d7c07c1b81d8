package org.headhouse.linter.report;

import static org.headhouse.linter.report.TextReport.printable;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.Region;

/**
 * Results as lines that a build server shows beside the lines of a file: the commands {@code
 * error}, {@code warning} and {@code notice} of GitHub's workflows. Source:
 * https://docs.github.com/en/actions/reference/workflow-commands-for-github-actions (parameters
 * {@code title}, {@code file}, {@code line}, {@code endLine}, {@code col}, {@code endColumn}). The
 * escapes are those of GitHub's own toolkit, https://github.com/actions/toolkit, in
 * packages/core/src/command.ts.
 *
 * @param paths how files are called
 */
public record AnnotationReport(RepositoryPaths paths) {

  private static final String NEW_LINE = "%0A";

  /** A line for each result, and one for each fault of the run itself. */
  public Stream<String> lines(List<Result> results, List<Notification> notifications) {
    return Stream.concat(
        results.stream().map(this::line),
        notifications.stream().filter(Notification::isFailure).map(this::line));
  }

  private String line(Result result) {
    Region region = result.location().region();
    List<String> properties = new ArrayList<>();
    properties.add("file=" + property(paths.of(result.location().file())));
    properties.add("line=" + region.startLine());
    if (region.endLine() == region.startLine()) {
      properties.add("endLine=" + region.startLine());
      // Columns go with one line only, and the last one is the last that is meant.
      properties.add("col=" + region.startColumn());
      properties.add("endColumn=" + Math.max(region.startColumn(), region.endColumn() - 1));
    } else {
      properties.add("endLine=" + lastLine(region));
    }
    properties.add("title=" + property(result.rule()));
    return command(result.level(), properties, data(result.message()));
  }

  private String line(Notification notification) {
    List<String> properties = new ArrayList<>();
    if (notification.file() != null) {
      properties.add("file=" + property(paths.of(notification.file())));
    }
    properties.add("title=not checked");
    return command(notification.level(), properties, data(notification.text()));
  }

  private static String command(Level level, List<String> properties, String text) {
    String name =
        switch (level) {
          case ERROR -> "error";
          case WARNING -> "warning";
          case NOTE, NONE -> "notice";
        };
    return "::" + name + " " + String.join(",", properties) + "::" + text;
  }

  /** The last line with something of a region, whose end is not in it. */
  static int lastLine(Region region) {
    boolean atStart = region.endColumn() == 1 && region.endLine() > region.startLine();
    return atStart ? region.endLine() - 1 : region.endLine();
  }

  /** The parts of a message, each on a line of its own. */
  private static String data(Message message) {
    return Stream.of(message.fact(), "why: " + message.reason(), "fix: " + message.remedy())
        .map(AnnotationReport::data)
        .collect(Collectors.joining(NEW_LINE));
  }

  private static String data(String text) {
    return printable(text).replace("%", "%25").replace("\r", "%0D").replace("\n", NEW_LINE);
  }

  private static String property(String text) {
    return data(text).replace(":", "%3A").replace(",", "%2C");
  }
}
