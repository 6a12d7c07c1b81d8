package org.headhouse.linter.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.headhouse.linter.RandomCases;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Document;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.headhouse.linter.yaml.YamlReader;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.Yaml;

/**
 * Drafts of sound lists are sites without results, and keep every name. Whether units of no known
 * type need bias only the manuals can tell, so a draft without any is told of that.
 */
class SoundListsTest {
  private static final List<String> TYPES =
      List.of("", "eight-way", "sixteen-way", "heating-loop", "screen-drive");
  private static final List<String> PLACES =
      List.of("Bay", "NO", "Ñandú", "a: b", "#", "& x", "'q'", "\"q\"", "\uD83C\uDF31 y", "%z");

  /**
   * Loads stay under 32 in all, and lengths under 600 m, of which 24 AWG carries a signal to 60
   * units; a rule that a list breaks all the same would be told here.
   */
  @Test
  void randomLists() {
    SiteLinter linter = Lists.linter("");
    RandomCases.each(
        400,
        random -> {
          int number = 2 + random.nextInt(59);
          String list = list(random, number);
          DraftSettings settings =
              Lists.settings("elm-row", random.nextBoolean() ? Lists.volts("5 V") : null);
          String text = Lists.made(linter, list, settings);
          boolean biased = text.contains("\n  bias:");
          assertThat(linter.checkText("elm-row.yaml", text).at(Level.WARNING))
              .as("%s\n%s", list, text)
              .allMatch(result -> !biased && result.rule().equals("bias.missing"));
        });
  }

  private static String list(Random random, int number) {
    char separator = random.nextBoolean() ? ',' : ';';
    List<String> rows = new ArrayList<>();
    rows.add("name" + separator + "cable-to-next" + separator + "device-type");
    double loads = 0;
    for (int i = 1; i <= number; i++) {
      // A unit of no known type counts as a whole load: first some of them, then lighter ones.
      String type = TYPES.get(loads < 2 ? random.nextInt(5) : 1 + random.nextInt(4));
      loads += type.isEmpty() ? 1 : 0.5;
      String name = PLACES.get(random.nextInt(PLACES.size())) + " x" + i;
      String length = i == number ? "" : random.nextInt(600 / number) + "." + i % 10 + " m";
      String cell = "\"" + name.replace("\"", "\"\"") + "\"";
      rows.add(cell + separator + length + separator + type);
    }
    return String.join(random.nextBoolean() ? "\r\n" : "\n", rows) + "\n";
  }

  /**
   * Names that some reader of YAML would take for something else, if they stood bare. A no-break
   * space is a space: nobody sees which of them a spreadsheet has.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "NO",
        "y",
        "On",
        "off",
        "null",
        "Null",
        "~",
        "true",
        "12:30",
        "010",
        "0x1F",
        "1_000",
        "1e3",
        "0b11",
        "7",
        "1.5",
        ".inf",
        ".5",
        "+1",
        "2026-03-14",
        "<<",
        "=",
        "- x",
        "-",
        "---",
        "...",
        "a: b",
        "a:",
        ": a",
        "#1",
        "a #b",
        "?",
        "? a",
        "[a]",
        "{a}",
        "a, b",
        "a]",
        "*a",
        "&a",
        "!a",
        "|",
        ">",
        "'a'",
        "it's",
        "\"a\"",
        "a\"b",
        "%a",
        "@a",
        "`a`",
        "\\",
        "a\\nb",
        "é",
        "Ñandú 7",
        "\uD83C\uDF31",
        "\uD83C\uDF31 x",
        "a\u00A0b",
        "a\u200Bb",
        "a\u3164b",
        "a\u2028b",
        "a\u0085b",
        "a\u0000b",
        "a\nb",
        "a\tb",
        "a\uFEFFb",
        "\u202Ea",
        "ば い",
        "a\uE000b",
        "0o17",
        "190:20:30",
        "a b  c",
        "(a)"
      })
  void namesAreReadAsTheyAreListed(String name) {
    String cell = "\"" + name.replace("\"", "\"\"") + "\"";
    String text = Lists.made("name,cable\n" + cell + ",4 m\nHardening Bay,\n");
    Document document = new YamlReader(Limits.DEFAULT).read(new SourceText("elm-row.yaml", text));
    assertThat(document.findings()).isEmpty();
    assertThat(document.ambiguous()).isEmpty();
    String read = name.replace('\u00A0', ' ');
    assertThat(texts(document.root(), "unit")).containsExactly(read, "Hardening Bay");
    assertThat(texts(document.root(), "at")).containsExactly(read);
    // The library's own reader follows YAML 1.1.
    assertThat(new Yaml().<Object>load(text).toString())
        .contains("{at=" + read + ", ")
        .contains("{unit=" + read + ", ");
  }

  private static List<String> texts(@Nullable Node node, String key) {
    List<String> found = new ArrayList<>();
    if (node instanceof Sequence sequence) {
      sequence.items().forEach(item -> found.addAll(texts(item, key)));
    } else if (node instanceof Mapping mapping) {
      for (Mapping.Entry entry : mapping.entries()) {
        if (entry.key().text().equals(key) && entry.value() instanceof Scalar scalar) {
          found.add(scalar.text());
        }
        found.addAll(texts(entry.value(), key));
      }
    }
    return found;
  }
}
