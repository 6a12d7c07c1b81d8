package org.headhouse.linter;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.headhouse.linter.figures.SiteFigures;
import org.headhouse.linter.line.ClosingTime;
import org.headhouse.linter.line.ReadingAge;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Result;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the page on storms shows is what the linter computes and reports. */
class StormPageTest {
  private static final Path PAGE = Path.of("docs/storm.md");
  private static final Pattern NUMBER = Pattern.compile("[0-9]+\\.[0-9]");

  private static String block(String mark) throws IOException {
    Matcher matcher =
        Pattern.compile("<!-- " + Pattern.quote(mark) + " -->\n```[a-z]+\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(PAGE));
    assertThat(matcher.find()).as(mark).isTrue();
    return matcher.group(1);
  }

  private static List<Result> results(String site) throws IOException {
    return SiteLinter.builder()
        .deviceTypes(SiteInput.text("device-types.yaml", block("example: device-types")))
        .build()
        .checkText("rowan-lane.yaml", site)
        .results();
  }

  @Test
  void theSiteIsSound() throws IOException {
    assertThat(results(block("example: site"))).isEmpty();
  }

  private static SiteFigures figures() throws IOException {
    return new LineCheck(
            block("example: site"), block("example: device-types"), "format: 1\nrule-set: 1\n")
        .figures();
  }

  private static String seconds(@Nullable Double seconds) {
    return String.format(Locale.ROOT, "%.1f", requireNonNull(seconds));
  }

  private static List<String> numbers(String line) {
    return NUMBER.matcher(line).results().map(MatchResult::group).toList();
  }

  @Test
  void thePartsAreThoseThatAreComputed() throws IOException {
    SiteFigures figures = figures();
    ReadingAge age = requireNonNull(requireNonNull(figures.traffic()).ageOneSilent());
    ClosingTime follower = requireNonNull(figures.storm()).units().get(1).time();
    double staleAfter = requireNonNull(follower.staleSeconds()) - age.overdueSeconds();
    assertThat(block("output: parts").lines().map(line -> numbers(line).get(0)))
        .containsExactlyElementsOf(
            Stream.of(
                    follower.averagingSeconds(),
                    age.periodsSeconds(),
                    age.otherSeconds(),
                    age.frameSeconds(),
                    staleAfter,
                    follower.closeSeconds())
                .map(StormPageTest::seconds)
                .toList());
    assertThat(block("output: parts"))
        .contains(String.format(Locale.ROOT, "%.1f ms", age.frameSeconds() * 1e3));
  }

  @Test
  void theSumsAreThoseThatAreComputed() throws IOException {
    SiteFigures figures = figures();
    ReadingAge age = requireNonNull(requireNonNull(figures.traffic()).ageOneSilent());
    ClosingTime head = requireNonNull(figures.storm()).units().get(0).time();
    ClosingTime follower = figures.storm().units().get(1).time();
    Double within = figures.storm().closeWithinSeconds();
    List<Stream<Double>> sums =
        List.of(
            Stream.of(
                age.periodsSeconds(), age.otherSeconds(), age.frameSeconds(), age.totalSeconds()),
            Stream.of(
                age.otherSeconds(),
                age.frameSeconds(),
                requireNonNull(follower.staleSeconds()) - age.overdueSeconds(),
                follower.staleSeconds()),
            Stream.of(
                follower.averagingSeconds(),
                follower.waitingSeconds(),
                follower.closeSeconds(),
                follower.totalSeconds(),
                within),
            Stream.of(head.averagingSeconds(), head.closeSeconds(), head.totalSeconds(), within));
    List<String> lines = block("output: sums").lines().toList();
    assertThat(lines).hasSameSizeAs(sums);
    for (int i = 0; i < lines.size(); i++) {
      assertThat(numbers(lines.get(i))).isEqualTo(sums.get(i).map(StormPageTest::seconds).toList());
    }
  }

  static List<String> edits() throws IOException {
    return Pattern.compile("<!-- output: (.* -> .*) -->")
        .matcher(Files.readString(PAGE))
        .results()
        .map(match -> match.group(1))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("edits")
  void anEditGivesTheResultShown(String edit) throws IOException {
    String[] sides = edit.replace("\\n", "\n").split(" -> ", 2);
    String site = block("example: site");
    assertThat(site).contains(sides[0]);
    assertShown("output: " + edit, site.replace(sides[0], sides[1]));
  }

  @Test
  void theRecordGivesTheResultShown() throws IOException {
    String site = block("example: site").replace("stage: planned", "stage: commissioned");
    assertShown("output: record", site + block("example: record"));
  }

  private static void assertShown(String mark, String site) throws IOException {
    List<String> found =
        results(site).stream()
            .filter(result -> result.rule().startsWith("outdoor."))
            .flatMap(result -> TextReport.lines(result).stream())
            .toList();
    assertThat(found).isNotEmpty();
    assertThat(block(mark).lines()).containsExactlyElementsOf(found);
  }
}
