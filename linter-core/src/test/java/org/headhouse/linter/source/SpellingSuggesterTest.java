package org.headhouse.linter.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellingSuggesterTest {
  private static final List<String> KNOWN = List.of("Tomatoes North", "Tomatoes South", "Nursery");

  /**
   * One letter too many, one too few, another one, two that are swapped; then more than a third.
   */
  @ParameterizedTest
  @CsvSource({
    "Nurssery, Nursery",
    "Nurery, Nursery",
    "Nurzery, Nursery",
    "Nusrery, Nursery",
    "tomatoes_north, Tomatoes North",
    "Tomatoes, ",
    "Nu, "
  })
  void theNearestWordIsFound(String written, String near) {
    assertThat(SpellingSuggester.suggest(written, KNOWN).orElse(null)).isEqualTo(near);
  }

  /** Five hundred names of sixty letters, each as near to every one that is looked for. */
  @Test
  void whereHundredsAreWrongNoneIsMisspelt() {
    SpellingSuggester nearest =
        new SpellingSuggester(
            IntStream.range(0, 500).mapToObj(SpellingSuggesterTest::name).toList());
    assertThat(nearest.suggest(name(1) + "x")).contains(name(1));
    for (int i = 0; i < 10; i++) {
      nearest.suggest(name(i) + "x");
    }
    assertThat(nearest.suggest(name(1) + "x")).isEmpty();
    assertThat(nearest.suggest(name(1) + "x")).isEmpty();
  }

  private static String name(int number) {
    String letters =
        Integer.toString(number + 100)
            .chars()
            .mapToObj(digit -> Character.toString('a' + digit % 10))
            .collect(Collectors.joining());
    return "z".repeat(57) + letters;
  }

  /** Another number is another thing. */
  @ParameterizedTest
  @CsvSource({"Tomato 2, Tomato 1", "Bay 12, Bay 21", "East 1, East", "type-2, type-3"})
  void digitsAreNeverMisspelt(String written, String known) {
    assertThat(SpellingSuggester.suggest(written, List.of(known))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "Seedlin North, Seedling North, true",
    "Seedling Nroth, Seedling North, true",
    "Seedlin Nort, Seedling North, false",
    "Freesia Est, Freesia East, false",
    "Freesia Eastt, Freesia East, true",
  })
  void oneLetterIsCertainWhereNothingElseIsAsNear(String written, String near, boolean certain) {
    SpellingSuggester suggester =
        new SpellingSuggester(List.of("Seedling North", "Freesia East", "Freesia Esst"));
    assertThat(suggester.suggest(written)).contains(near);
    assertThat(suggester.isCertain(written, near)).isEqualTo(certain);
  }
}
