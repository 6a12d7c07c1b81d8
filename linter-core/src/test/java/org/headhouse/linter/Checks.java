package org.headhouse.linter;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.report.TextReport;

/** Checks texts in tests, and tells results in one line each. */
public final class Checks {
  private Checks() {}

  public static CheckReport of(byte[] bytes) {
    return linter().check(Stream.of(new SiteInput("example.yaml", most -> bytes)));
  }

  public static CheckReport of(String text) {
    return linter().checkText("example.yaml", text);
  }

  /** {@code line:column rule} of each result. */
  public static List<String> places(String text) {
    return places(of(text));
  }

  public static List<String> places(CheckReport report) {
    return report.results().stream()
        .map(
            result ->
                result.location().region().startLine()
                    + ":"
                    + result.location().region().startColumn()
                    + " "
                    + result.rule())
        .toList();
  }

  public static List<String> lines(String text) {
    return of(text).results().stream().map(TextReport::inOneLine).toList();
  }

  public static SiteLinter linter() {
    try {
      return SiteLinter.builder().build();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }
}
