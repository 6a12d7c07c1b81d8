package org.headhouse.linter.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What libFuzzer's log tells of one run. */
record FuzzLog(List<String> lines) {
  private static final Pattern STATUS =
      Pattern.compile("#\\d+\\s+\\w+\\s+cov: (\\d+) ft: (\\d+) corp: (\\d+)/(\\S+) .*");

  static FuzzLog of(Path log) throws IOException {
    return new FuzzLog(Files.readAllLines(log));
  }

  /** Whether the fuzzer came to its end without a finding. */
  boolean isSound() {
    return number("stat::number_of_executed_units") > 0
        && lines.stream().noneMatch(line -> line.startsWith("artifact_prefix="));
  }

  /** A row of a table: subject, executions, executions a second, places reached, inputs, bytes. */
  String row(String subject) {
    String places = "?";
    String inputs = "?";
    String size = "?";
    for (String line : lines) {
      Matcher status = STATUS.matcher(line);
      if (status.matches()) {
        places = status.group(1);
        inputs = status.group(3);
        size = status.group(4);
      }
    }
    return String.format(
        Locale.ROOT,
        "| %s | %d | %d | %s | %s | %s | %s |",
        subject,
        number("stat::number_of_executed_units"),
        number("stat::average_exec_per_sec"),
        places,
        inputs,
        size,
        isSound() ? "" : "FINDING");
  }

  private long number(String key) {
    return lines.stream()
        .filter(line -> line.startsWith(key + ":"))
        .mapToLong(line -> Long.parseLong(line.substring(key.length() + 1).strip()))
        .findFirst()
        .orElse(0);
  }
}
