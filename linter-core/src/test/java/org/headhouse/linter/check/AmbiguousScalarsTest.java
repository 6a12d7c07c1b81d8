package org.headhouse.linter.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.Region;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An error where the value is read, a warning where it is not. */
class AmbiguousScalarsTest {

  private static List<String> told(String text) {
    return Checks.of(text).results().stream()
        .filter(result -> result.rule().equals("yaml.ambiguous-scalar"))
        .map(AmbiguousScalarsTest::place)
        .toList();
  }

  private static String place(Result result) {
    Region region = result.location().region();
    return region.startLine() + ":" + region.startColumn() + " " + result.level().word();
  }

  @ParameterizedTest
  @CsvSource({
    "title: NO, 3:8 error",
    "title: 12:30, 3:8 error",
    "nonsense: NO, 3:11 warning",
    "'nonsense:\n  a: {b: [NO]}', 4:11 warning",
    "'nonsense: {a: NO}\ntitle: NO', 3:15 warning; 4:8 error",
    "'commissioning: {date: 2026-03-14, by: NO}', 3:39 error",
    "'commissioning: {nonsense: 1, date: 2026-03-14, by: NO}', 3:52 error",
    "'commissioning: {date: 2026-03-14, by: A, nonsense: 2026-03-14}', 3:52 warning",
    "'commissioning: {date: 2026-03-14, by: 2026-03-14}', 3:39 error",
    "title: 'NO',",
    "title: 'No. 5',",
    "'commissioning: {date: 2026-03-14, by: A}',"
  })
  void levels(String keys, String expected) {
    String text = Example.with("stage: planned\n", keys + "\nstage: planned\n");
    assertThat(String.join("; ", told(text))).isEqualTo(expected == null ? "" : expected);
  }
}
