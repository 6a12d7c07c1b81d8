package org.headhouse.linter.growth;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.headhouse.linter.Written;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Whatever there can be many of, four times as many make no more work than n log n, and the work
 * stays within its budget. Allocated bytes stand for work here, since they hardly differ from run
 * to run; the profile {@code fuzz} has larger numbers, and looks at the time.
 */
@Tag("long")
@Tag("written")
class GrowthTest {
  private static final Path PAGE = Path.of("docs", "security.md");
  private static final String HEAD =
      """
      | what grows | n | 4n | MB for n | MB for 4n | times | times a clean site of that size |
      |---|---|---|---|---|---|---|
      """;

  @ParameterizedTest
  @EnumSource
  void isLimited(Growing growing) {
    Growth growth = Growth.of(growing, 1);
    assertThat(GrowthLimits.broken(growth, GrowthLimits.clean())).as(growth.toString()).isEmpty();
  }

  /**
   * The values of the table are those of one run; what it is a table of is compared, and only where
   * that has changed is it written.
   */
  @Test
  void theTableOfThePageIsComplete() throws IOException {
    if (Written.anew() && !keys().equals(expected())) {
      write();
    }
    assertThat(keys())
        .as("%s is stale: write it with -Dgroups=written -Dwrite", PAGE)
        .containsExactlyElementsOf(expected());
  }

  private static List<String> keys() throws IOException {
    return table(Files.readString(PAGE)).lines().map(GrowthTest::firstColumns).toList();
  }

  private static List<String> expected() {
    List<String> keys = new ArrayList<>();
    for (Growing growing : Growing.values()) {
      keys.add("| " + growing.what() + " | " + growing.few() + " | " + 4 * growing.few() + " |");
    }
    return keys;
  }

  private static String firstColumns(String row) {
    String[] cells = row.split(" \\| ", -1);
    return cells[0] + " | " + cells[1] + " | " + cells[2] + " |";
  }

  private static void write() throws IOException {
    double clean = GrowthLimits.clean();
    String rows =
        List.of(Growing.values()).stream()
            .map(growing -> Growth.of(growing, 1).row(clean) + "\n")
            .collect(Collectors.joining());
    String page = Files.readString(PAGE);
    Files.writeString(
        PAGE,
        page.replace(HEAD + table(page), HEAD + rows)
            .replaceFirst("(?<=measured on )[0-9-]{10}", LocalDate.now(ZoneOffset.UTC).toString()));
  }

  /** The rows, without the head. */
  private static String table(String page) {
    int start = page.indexOf(HEAD) + HEAD.length();
    assertThat(start).as("the head of the table in %s", PAGE).isGreaterThan(HEAD.length());
    return page.substring(start)
        .lines()
        .takeWhile(line -> line.startsWith("|"))
        .map(line -> line + "\n")
        .collect(Collectors.joining());
  }
}
