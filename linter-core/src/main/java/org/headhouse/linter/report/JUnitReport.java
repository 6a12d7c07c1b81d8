package org.headhouse.linter.report;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.headhouse.linter.source.InvisibleCharacters.shown;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.headhouse.linter.markup.XmlWriter;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;

/**
 * Results in the XML form that Surefire writes for JUnit tests, which build servers read: a test
 * case for each rule that was broken in a file, failed where it reaches the failing level, and one
 * in error for each fault of the run itself.
 */
public final class JUnitReport {
  private static final String DECLARATION = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";

  private final Level failLevel;

  private final RepositoryPaths paths;

  /** A report in which results of a level and more severe ones are failures. */
  public JUnitReport(Level failLevel) {
    this(failLevel, RepositoryPaths.unknown());
  }

  /**
   * The same for a host of code.
   *
   * @param paths what the attribute {@code file} of a test case calls a file
   */
  public JUnitReport(Level failLevel, RepositoryPaths paths) {
    this.failLevel = failLevel;
    this.paths = paths;
  }

  private record Case(String file, String rule) implements Comparable<Case> {
    @Override
    public int compareTo(Case other) {
      int byFile = file.compareTo(other.file);
      return byFile != 0 ? byFile : rule.compareTo(other.rule);
    }
  }

  /** Writes the report; the stream is left open. */
  public void write(List<Result> results, List<Notification> notifications, OutputStream out)
      throws IOException {
    List<Notification> troubles = notifications.stream().filter(Notification::isFailure).toList();
    Map<Case, List<Result>> cases =
        results.stream()
            .filter(result -> !result.suppressed())
            .collect(
                Collectors.groupingBy(
                    result -> new Case(result.location().file(), result.rule()),
                    TreeMap::new,
                    Collectors.toList()));
    long failures = cases.values().stream().filter(this::fails).count();
    XmlWriter xml = new XmlWriter();
    xml.start(
        "testsuite",
        "name",
        "site definitions",
        // Some servers take a suite without a case for a broken run.
        "tests",
        String.valueOf(cases.size() + troubles.size() + 1),
        "errors",
        String.valueOf(troubles.size()),
        "skipped",
        "0",
        "failures",
        String.valueOf(failures),
        "time",
        "0");
    openCase(xml, "all sites", "checked").end();
    out.write((DECLARATION + xml.take()).getBytes(UTF_8));
    for (Map.Entry<Case, List<Result>> entry : cases.entrySet()) {
      testCase(xml, entry.getKey(), entry.getValue());
      out.write(xml.take().getBytes(UTF_8));
    }
    troubles.forEach(trouble -> errorCase(xml, trouble));
    out.write(xml.newLine().end().newLine().finish().getBytes(UTF_8));
    out.flush();
  }

  private static XmlWriter openCase(XmlWriter xml, String file, String name) {
    xml.text("\n  ");
    return xml.start("testcase", "classname", shown(file), "name", name, "time", "0");
  }

  private void testCase(XmlWriter xml, Case id, List<Result> results) {
    int line = results.get(0).location().region().startLine();
    xml.text("\n  ");
    xml.start(
        "testcase",
        "classname",
        shown(id.file()),
        "name",
        id.rule(),
        "time",
        "0",
        "file",
        shown(paths.of(id.file())),
        "line",
        String.valueOf(line));
    String text = results.stream().map(JUnitReport::text).collect(Collectors.joining("\n\n"));
    Optional<Result> first = results.stream().filter(this::fails).findFirst();
    if (first.isPresent()) {
      String message = shown(first.get().message().fact());
      xml.element("failure", text, "message", message, "type", id.rule());
    } else {
      xml.element("system-out", text);
    }
    xml.end();
  }

  private static void errorCase(XmlWriter xml, Notification trouble) {
    openCase(
            xml,
            trouble.file() == null ? "all sites" : trouble.file(),
            trouble.rule() == null ? "reading" : trouble.rule())
        .start("error", "message", shown(trouble.text()), "type", "trouble")
        .end()
        .end();
  }

  /** As people read it on a console; whether it is known comes after its first line. */
  private static String text(Result result) {
    List<String> lines = new ArrayList<>(TextReport.lines(result));
    if (result.known()) {
      lines.set(0, lines.get(0) + " (known from the baseline)");
    }
    return String.join("\n", lines);
  }

  private boolean fails(List<Result> results) {
    return results.stream().anyMatch(this::fails);
  }

  /** What is known from the baseline does not fail. */
  private boolean fails(Result result) {
    return !result.known() && result.level().reaches(failLevel);
  }
}
