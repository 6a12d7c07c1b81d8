package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sequences of places, from place 0 on. */
class VisitOrderTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "5; 1; 3     | 1 3 5",
        "2; 2; 1     | 1 2 2",
        // Each sequence keeps its order.
        "9 1; 8 2    | 8 9 2 1",
        "3 1; 2      | 2 3 1",
        // Always to the nearest, onward rather than back.
        "4; 6; 2     | 2 4 6",
        "5 5; 4 6; 9 | 4 5 5 6 9",
        "7 6; 10; 5  | 5 7 6 10",
        "7 2; 8      | 7 8 2",
        "5 7; 5 3    | 5 5 7 3",
        "2 4; 6      | 2 4 6",
        "4 5; 3      | 3 4 5",
        "4 6; 4 2; 3 | 3 4 4 6 2",
        "; 1         | 1",
      })
  void alongTheChain(String sequences, String walked) {
    List<List<Integer>> each =
        Arrays.stream(sequences.split(";", -1))
            .map(
                one ->
                    Arrays.stream(one.strip().split(" ", -1))
                        .filter(place -> !place.isEmpty())
                        .map(Integer::valueOf)
                        .toList())
            .toList();
    assertThat(
            VisitOrder.along(each, Integer::intValue).stream()
                .map(String::valueOf)
                .collect(Collectors.joining(" ")))
        .isEqualTo(walked);
  }
}
