package org.headhouse.linter.rules.name;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.text.SpoofChecker;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.headhouse.linter.RandomCases;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The table of look-alikes against UTS 39, as ICU implements it. */
class LookAlikesTest {
  private static final SpoofChecker UTS_39 =
      new SpoofChecker.Builder().setChecks(SpoofChecker.CONFUSABLE).build();

  private static boolean looksAlike(String one, String other) {
    return LookAlikes.shape(one).equals(LookAlikes.shape(other));
  }

  private static boolean isConfusable(String one, String other) {
    return UTS_39.getSkeleton(one).equals(UTS_39.getSkeleton(other));
  }

  /** RFC 4648, section 3.4, for 0 and O, 1 and l; the rest is UTS 39's own. */
  @ParameterizedTest
  @CsvSource({
    "0, O, true",
    "1, l, true",
    "I, l, true",
    "1, I, true",
    "|, l, true",
    "m, rn, true",
    "Zone 1, Zone l, true",
    "Bay O2, Bay 02, true",
    "Farm, Farrn, true",
    "Zone 1, Zone 2, false",
    "Zone 1, zone 1, false",
    "O, o, false",
    "5, S, false",
    "8, B, false"
  })
  void agreesWithUts39(String one, String other, boolean alike) {
    assertThat(isConfusable(one, other)).isEqualTo(alike);
    assertThat(looksAlike(one, other)).isEqualTo(alike);
  }

  /** Letters, digits, space and hyphen: what names are written with. */
  static Stream<String> plainCharacters() {
    return IntStream.concat(
            IntStream.concat(IntStream.rangeClosed('a', 'z'), IntStream.rangeClosed('A', 'Z')),
            IntStream.concat(IntStream.rangeClosed('0', '9'), IntStream.of(' ', '-')))
        .mapToObj(Character::toString);
  }

  @ParameterizedTest
  @MethodSource("plainCharacters")
  void lacksNoPlainCharacterOfUts39(String character) {
    List<String> others =
        plainCharacters().filter(other -> isConfusable(character, other)).toList();
    assertThat(plainCharacters().filter(other -> looksAlike(character, other)))
        .containsExactlyElementsOf(others);
  }

  @Test
  void agreesWithUts39OnWholeNames() {
    List<String> letters = plainCharacters().collect(Collectors.toList());
    List<String> lookAlikes = List.of("0", "O", "1", "l", "I", "m", "rn", "r", "n");
    double alike =
        RandomCases.share(
            20_000,
            random -> {
              List<String> parts =
                  random
                      .ints(6, 0, lookAlikes.size() + 3)
                      .mapToObj(n -> part(n, lookAlikes, letters, random))
                      .toList();
              String one = String.join("", parts);
              String other =
                  one.replace("m", "rn")
                      .replace(random.nextBoolean() ? "0" : "1", random.nextBoolean() ? "O" : "I");
              assertThat(looksAlike(one, other))
                  .as("%s and %s", one, other)
                  .isEqualTo(isConfusable(one, other));
              return looksAlike(one, other) && !one.equals(other);
            });
    assertThat(alike).isGreaterThan(0.25);
  }

  private static String part(int n, List<String> lookAlikes, List<String> letters, Random random) {
    return n < lookAlikes.size() ? lookAlikes.get(n) : letters.get(random.nextInt(letters.size()));
  }

  @ParameterizedTest
  @CsvSource({
    "Zone 1, Zone l, 23:11 name.confusable",
    "Bay O2, Bay 02, 23:11 name.confusable",
    "Farm, Farrn, 23:11 name.confusable",
    "Zone 1, Zone 2,",
    // Equal but for case: reported as a duplicate, and not twice.
    "ZONE ONE, Zone One, 23:11 name.duplicate",
    // Upper-case I becomes i in lower case, which looks like nothing else.
    "Bay I, bay i, 23:11 name.duplicate",
    "Bay l, Bay L, 23:11 name.duplicate"
  })
  void isReportedOnce(String first, String second, String expected) {
    String text = Example.with("Seedling North", first).replace("Hardening Bay", second);
    assertThat(Checks.places(text)).isEqualTo(expected == null ? List.of() : List.of(expected));
  }
}
