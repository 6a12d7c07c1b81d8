package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The record that a sheet offers can be pasted as it is, and then proves nothing. */
class CommissioningRecordTest {

  static List<String> sites() {
    try (Stream<Path> files = Files.walk(Sheets.SAMPLES.resolve("sites"))) {
      return Stream.concat(
              Stream.of(Example.SITE, Hostile.site()),
              files.filter(Files::isRegularFile).sorted().map(CommissioningRecordTest::read))
          .toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  @ParameterizedTest
  @MethodSource("sites")
  void aSiteWithItUntouchedIsNotProved(String site) {
    String withoutOld = site.replaceAll("(?ms)^commissioning:\\n(?:  .*\\n)+", "");
    List<String> added = new ArrayList<>(rules(paste(site, withoutOld)));
    added.removeAll(rules(site));
    assertThat(added)
        .containsExactlyInAnyOrder("commissioning.placeholder", "commissioning.unit-unseen");
  }

  private static String paste(String site, String withoutOld) {
    String record = Sheets.page(site).expectFirst("#proving pre").wholeText();
    String pasted = withoutOld.replaceFirst("(?m)^stage: .*\\n", Matcher.quoteReplacement(record));
    assertThat(pasted).contains("stage: commissioned\ncommissioning:\n");
    return pasted;
  }

  private static List<String> rules(String site) {
    CheckReport report = Sheets.linter(1).check(Stream.of(SiteInput.text("example.yaml", site)));
    return report.results().stream()
        .map(Result::rule)
        .filter(rule -> !rule.equals("site.file-name"))
        .distinct()
        .toList();
  }

  /** Nobody's signature and no measured value are in it before somebody writes them. */
  @Test
  void itSaysNothingThatNobodyHasSeen() {
    String record = Sheets.page(Example.SITE).expectFirst("#proving pre").wholeText();
    assertThat(record)
        .isEqualTo(
            """
            stage: commissioned
            commissioning:
              date: "?"  # the day of the visit, as 2026-03-14
              by: "?"  # the initials of who proved the line
              # Add what was really measured and seen, and delete its # and nothing else.
              # measured: {pair-resistance: ___ ohm, idle-voltage: ___ V}
              # outdoor-readings-seen:  # the units whose display showed them
              #   - "Seedling North"
              #   - "Hardening Bay"
            """);
  }

  @Test
  void theMeasuredLineIsValidOnceItIsCompleted() {
    String record = Sheets.page(Example.SITE).expectFirst("#proving pre").wholeText();
    String completed =
        record
            .replace("date: \"?\"", "date: 2026-03-14")
            .replace("by: \"?\"", "by: R.O.")
            .replace("  # measured", "  measured")
            .replace("  # outdoor", "  outdoor")
            .replace("  #   - ", "    - ")
            .replace("___ ohm", "60 ohm")
            .replace("___ V", "0.24 V");
    assertThat(Pattern.compile("(?m)^  measured:").matcher(completed).find()).isTrue();
    assertThat(rules(Example.SITE.replace("stage: planned\n", completed))).isEmpty();
  }
}
