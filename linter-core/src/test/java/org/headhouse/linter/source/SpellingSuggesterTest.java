package org.headhouse.linter.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
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
    "n, ",
    "Nu, "
  })
  void theNearestWordIsFound(String written, String near) {
    assertThat(SpellingSuggester.suggest(written, KNOWN).orElse(null)).isEqualTo(near);
  }

  /**
   * Five hundred names of sixty letters, a and b as they fall, so that each has to be compared with
   * most of every other.
   */
  @Test
  void whereHundredsAreWrongNoneIsMisspelt() {
    Random random = new Random(1);
    List<String> names = IntStream.range(0, 500).mapToObj(i -> word(random, "ab", 60)).toList();
    SpellingSuggester nearest = new SpellingSuggester(names);
    assertThat(nearest.suggest(names.get(1) + "x")).contains(names.get(1));
    for (int i = 0; i < 100; i++) {
      nearest.suggest(word(random, "ab", 60));
    }
    assertThat(nearest.suggest(names.get(1) + "x")).isEmpty();
    assertThat(nearest.suggest(names.get(1) + "x")).isEmpty();
  }

  /** Another number is another thing. */
  @ParameterizedTest
  @CsvSource({
    "Tomato 2, Tomato 1",
    "Bay 12, Bay 21",
    "East 1, East",
    "type-2, type-3",
    "House B, House A",
    "B House, House",
    "Bay 10a, Bay 10b",
    "Nursery II, Nursery III",
    "Nursery IV East, Nursery VI East"
  })
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

  /** A side "on" is as well none of the two as it is in; one written in capitals is that side. */
  @ParameterizedTest
  @CsvSource({"on, in, false", "OUT, out, true", "ut, out, false"})
  void aShortWordIsNeverCertain(String written, String near, boolean certain) {
    SpellingSuggester suggester = new SpellingSuggester(List.of("in", "out"));
    assertThat(suggester.suggest(written)).contains(near);
    assertThat(suggester.isCertain(written, near)).isEqualTo(certain);
  }

  /** Against the definition, without anything that makes it quick. */
  @Test
  void theNearestOfRandomWordsIsFound() {
    Random random = new Random(2);
    int near = 0;
    for (int i = 0; i < 20_000; i++) {
      List<String> known =
          IntStream.range(0, 5).mapToObj(j -> word(random, "abc", 1 + random.nextInt(9))).toList();
      String written = word(random, "abcd", 1 + random.nextInt(9));
      Optional<String> nearest = SpellingSuggester.suggest(written, known);
      assertThat(nearest).as("%s in %s", written, known).isEqualTo(byDefinition(written, known));
      near += nearest.isPresent() ? 1 : 0;
    }
    assertThat(near).isBetween(1_000, 19_000);
  }

  private static Optional<String> byDefinition(String written, List<String> known) {
    return known.stream()
        .filter(word -> distance(written, word) <= Math.max(1, longer(written, word).length() / 3))
        .min(Comparator.comparing(word -> distance(written, word)));
  }

  private static String longer(String one, String other) {
    return one.length() > other.length() ? one : other;
  }

  /** Of the ends of two words: nothing to do, or the cheapest of all that can be done there. */
  private static int distance(String a, String b) {
    if (a.isEmpty() || b.isEmpty()) {
      return a.length() + b.length();
    }
    String shorterA = a.substring(1);
    String shorterB = b.substring(1);
    if (a.charAt(0) == b.charAt(0)) {
      return distance(shorterA, shorterB);
    }
    int least =
        1
            + Math.min(
                distance(shorterA, shorterB),
                Math.min(distance(shorterA, b), distance(a, shorterB)));
    boolean swapped =
        a.length() > 1
            && b.length() > 1
            && a.charAt(0) == b.charAt(1)
            && a.charAt(1) == b.charAt(0);
    return swapped ? Math.min(least, 1 + distance(a.substring(2), b.substring(2))) : least;
  }

  private static String word(Random random, String letters, int length) {
    StringBuilder word = new StringBuilder();
    for (int i = 0; i < length; i++) {
      word.append(letters.charAt(random.nextInt(letters.length())));
    }
    return word.toString();
  }
}
