package org.headhouse.linter.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Of very many faults the first are told, each at its own place, and that there are more. Work that
 * grows with the square of their number would not end here within the patience of anybody.
 */
class ManyFaultsTest {
  private static final int MANY = 60_000;
  private static final int TOLD = 5_000;

  @ParameterizedTest
  @CsvSource({
    "'', 'k%d: 1\n', '', k%d",
    "'    nonsense: {a: 1}\n', '    k%d: 1\n', '', chain/Hardening Bay/k%d",
    "'nonsense: {', 'k%d: NO, ', '}\n', nonsense/k%d",
    "'supervision: {link: serial, zones: [', '1, ', ']}\n', supervision/zones/%d"
  })
  void areToldUpToALimit(String start, String fault, String end, String path) {
    String faults =
        IntStream.range(0, MANY)
            .mapToObj(i -> String.format(fault, i))
            .collect(Collectors.joining());
    List<Result> results = Checks.of(Example.SITE + start + faults + end).results();
    assertThat(results).hasSize(TOLD + 1);
    assertThat(results.get(0).rule()).isEqualTo("file.too-large");
    assertThat(results.get(0).message().fact())
        .matches("the file has 6000[0-9] faults, of which the first 5000 are reported");
    assertThat(results.stream().map(Result::logical).collect(Collectors.toSet()))
        .contains(String.format(path, 0), String.format(path, TOLD - 10))
        .hasSizeBetween(TOLD - 1, TOLD + 1);
    assertThat(results.get(TOLD / 2).location().line()).hasSizeLessThanOrEqualTo(400);
  }
}
