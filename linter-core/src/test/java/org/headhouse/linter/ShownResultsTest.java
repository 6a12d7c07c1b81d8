package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Results that pages show are printed as the pages show them. */
@Tag("written")
class ShownResultsTest {
  @Test
  void theResultThatTheReadmeBeginsWith() throws IOException {
    List<String> lines = lines("sites/ferncombe.yaml", "address.duplicate");
    lines =
        lines.stream().map(line -> "[ERROR] " + line.replace("sites/", "faulty/sites/")).toList();
    compare(Path.of("../README.md"), "package", String.join("\n", lines));
  }

  @Test
  void theComputedResultsOfThePageOnFigures() throws IOException {
    compare(
        Path.of("docs/figures.md"),
        "computed",
        String.join("\n", lines("sites/bias.yaml", "bias.weak"))
            + "\n\n"
            + String.join("\n", lines("sites/weak-signal.yaml", "signal.weak")));
  }

  private static List<String> lines(String file, String rule) throws IOException {
    List<Result> found =
        FaultySites.check().results().stream()
            .filter(result -> result.location().file().equals(file) && result.rule().equals(rule))
            .collect(Collectors.toList());
    assertThat(found).isNotEmpty();
    return TextReport.lines(found.get(0));
  }

  private static void compare(Path page, String name, String lines) throws IOException {
    String start = "<!-- output: " + name + " -->\n```text\n";
    String text = Files.readString(page);
    int from = text.indexOf(start) + start.length();
    assertThat(from).isGreaterThan(start.length());
    int to = text.indexOf("\n```", from);
    Written.compare(page, text.substring(0, from) + lines + text.substring(to));
  }
}
