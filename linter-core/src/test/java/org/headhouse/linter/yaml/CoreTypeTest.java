package org.headhouse.linter.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import org.headhouse.linter.RandomCases;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.nodes.NodeId;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.resolver.Resolver;

class CoreTypeTest {

  @Test
  void agreesWithTheExpressionsOfTheStandard() {
    String alphabet = "0123456789.+-eExXoO_:aflnrstuNT~ ";
    RandomCases.each(
        200_000,
        random -> {
          StringBuilder text = new StringBuilder();
          for (int length = random.nextInt(7); length >= 0; length--) {
            text.append(alphabet.charAt(random.nextInt(alphabet.length())));
          }
          assertThat(CoreType.of(text.toString()))
              .as(text.toString())
              .isEqualTo(CoreSchema.type(text.toString()));
        });
  }

  /** The parser library's resolver is a reader of YAML 1.1. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "NO",
        "yes",
        "off",
        "010",
        "1_000",
        "12:30",
        "0b11",
        "2026-03-14",
        "1_0.5",
        "0o17",
        "-1:30"
      })
  void tellsWhatAnOlderReaderSeesOtherwise(String text) {
    assertThat(Yaml11Interpretation.of(text)).isPresent();
    Tag older = new Resolver().resolve(NodeId.scalar, text, true);
    boolean sameKind =
        older.equals(Tag.INT) ? CoreType.of(text) == CoreType.INTEGER : older.equals(Tag.STR);
    boolean octal = text.matches("0[0-7]+") || text.startsWith("0o");
    assertThat(!sameKind || octal).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1", "0", "-5", "3.2", "0x1F", "true", "~", "24 AWG", "1/8", "East 2", "none", "n/a"
      })
  void readsTheRestAsOlderReadersDo(String text) {
    assertThat(Yaml11Interpretation.of(text)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"010,the number 8", "NO,false", "12:30,a number to the base 60"})
  void saysWhatTheyWouldSee(String text, String seen) {
    assertThat(Yaml11Interpretation.of(text)).hasValue(seen);
  }
}
