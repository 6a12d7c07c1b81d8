package org.headhouse.linter.rules.name;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.Replacement;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NameRulesTest {
  private static final LineCheck SITE =
      LineCheck.of(
              new SiteText()
                  .unit("120 ohm", "10 m", "device-type: box")
                  .unit("none", "10 m", "device-type: box")
                  .unit("120 ohm", "", "device-type: box"))
          .types("id: box, unit-load: 1/8");

  /** In double quotes, so that escapes of YAML can be written. */
  private static LineCheck named(String name) {
    return SITE.with("unit: Bay 2\n", "unit: \"" + name + "\"\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Potting Shed",
        "7a",
        "Élevage",
        "温室",
        "Bay-3/4",
        "Unité Nord",
        "Node House",
        "Testing Ground",
        "New Bay",
        "Tempe House",
      })
  void goodNames(String name) {
    assertThat(named(name).reported()).isEmpty();
  }

  /** One or more words that say nothing, whatever their case. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "new",
        "TBD",
        "xxx",
        "xxxx",
        "Unnamed",
        "unit",
        "Unit 3",
        "unit-3",
        "UNIT #12",
        "Node7",
        "new unit",
        "test device 2",
        "Slot  4",
        "unit - 5",
        "new head"
      })
  void namesThatSayNothing(String name) {
    assertThat(named(name).reported()).containsExactly("warning name.placeholder");
  }

  private static final String INVISIBLE = "has a control or invisible character";
  private static final String SPACE = "starts or ends with a space";
  private static final String NO_LETTER = "has only digits or punctuation";

  /** General categories and Default_Ignorable_Code_Point: Unicode Character Database. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "' Bay'         | " + SPACE,
        "'Bay '         | " + SPACE,
        "'Bay\\_'       | " + SPACE,
        "'Bay\\u3000'   | " + SPACE,
        "12             | " + NO_LETTER,
        "'1-2'          | " + NO_LETTER,
        "'?'            | " + NO_LETTER,
        "'Bay\\t2'      | " + INVISIBLE,
        "'Bay\\u200b2'  | " + INVISIBLE,
        "'Bay\\u202e2'  | " + INVISIBLE,
        "'Bay\\u00ad2'  | " + INVISIBLE,
        "'Bay\\u20282'  | " + INVISIBLE,
        "'Bay\\u20292'  | " + INVISIBLE,
        "'Bay\\ue0002'  | " + INVISIBLE,
        "'\\u2800Bay'   | " + INVISIBLE,
        "'Bay\\u034f2'  | " + INVISIBLE,
        "'Bay\\u115f2'  | " + INVISIBLE,
        "'Bay\\u11602'  | " + INVISIBLE,
        "'Bay\\u17b42'  | " + INVISIBLE,
        "'Bay\\u17b52'  | " + INVISIBLE,
        "'Bay\\u180b2'  | " + INVISIBLE,
        "'Bay\\u180f2'  | " + INVISIBLE,
        "'Bay\\u31642'  | " + INVISIBLE,
        "'Bay\\ufe002'  | " + INVISIBLE,
        "'Bay\\ufe0f2'  | " + INVISIBLE,
        "'Bay\\uffa02'  | " + INVISIBLE,
        "'Bay\\U000e01002' | " + INVISIBLE,
        "'Bay\\U000e01ef2' | " + INVISIBLE,
      })
  void namesThatNobodyCanReadOut(String name, String fault) {
    LineCheck check = named(name);
    assertThat(check.reported()).containsExactly("error name.unreadable");
    assertThat(check.results().get(0).message().fact()).endsWith(" " + fault);
  }

  /** The neighbours of the characters that show nothing. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "\\u034e", "\\u0350", "\\u115e", "\\u1161", "\\u180a", "\\u1810", "\\u2801", "\\u3163",
        "\\u3165", "\\ufe10", "\\uffa1", "\\ufdfd"
      })
  void charactersThatShow(String character) {
    assertThat(named("Bay" + character + " x").rules()).doesNotContain("name.unreadable");
  }

  /** Wherever the file has the name. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "' Palms'       | Palms",
        "'Palms '       | Palms",
        "'  Palms\\_ '  | Palms",
        "'   '          |",
        "' 12 '         |",
        "' Pa\\u200blms'|",
        "'12'           |",
      })
  void spacesAroundANameAreTakenAway(String name, String bare) {
    Fix fix = named(name).results().get(0).fix();
    if (bare == null) {
      assertThat(fix).isNull();
    } else {
      assertThat(requireNonNull(fix).description())
          .isEqualTo("Write the name \"" + bare + "\" without spaces around it");
      assertThat(fix.replacements()).singleElement().extracting("text").isEqualTo("\"Palms\"");
    }
  }

  /** A name that is mended is mended wherever the file refers to it. */
  @Test
  void whatRefersToTheNameIsMendedToo() {
    LineCheck check =
        LineCheck.of(SITE.site() + "supervision: {zones: [Head House, 'Bay 2 ', Bay 3]}\n")
            .with("unit: Bay 2\n", "unit: 'Bay 2 '\n");
    Fix fix =
        check.results().stream()
            .filter(result -> result.rule().equals("name.unreadable"))
            .findFirst()
            .orElseThrow()
            .fix();
    assertThat(requireNonNull(fix).replacements())
        .extracting(Replacement::text)
        .containsExactly("'Bay 2'", "'Bay 2'");
  }

  /** The limit is one of the type; characters are what people count. */
  @ParameterizedTest
  @CsvSource({
    "Sixteen letters., 16, ''",
    "Seventeen letters, 16, shorten the name to 16 characters",
    "Palm Houses, 10, shorten the name to 10 characters",
    "Palm House, 10, ''",
    "Palm Houses \\U0001F334\\U0001F334, 14, ''",
  })
  void lengthOnTheDisplay(String name, int limit, String remedy) {
    LineCheck check = named(name).types("id: box, unit-load: 1/8, name-limit: " + limit);
    assertThat(check.results().stream().map(result -> result.message().remedy()))
        .containsExactlyElementsOf(remedy.isEmpty() ? List.of() : List.of(remedy));
  }

  @Test
  void withoutATypeThereIsNoDisplayToFit() {
    LineCheck check = named("A name of more than sixteen letters");
    assertThat(check.rules()).containsExactly("name.too-long");
    assertThat(check.with("    device-type: box\n", "").rules()).doesNotContain("name.too-long");
    assertThat(check.types("id: box, name-limit: wide").rules()).doesNotContain("name.too-long");
  }

  /** Two names of three: the last of the two is reported, with the other beside it. */
  @ParameterizedTest
  @CsvSource({
    "Zone 1, zone 1, name.duplicate",
    "Zone 1, 'Zone  1', name.duplicate",
    "Zone 1, Zone l, name.confusable",
    "Farm, Farrn, name.confusable",
    "Zone 1, Zone 2, ''",
    "Zone 1, ZONE 2, ''",
  })
  void twoNamesThatPeopleMix(String one, String other, String rule) {
    LineCheck check = named(one).with("unit: Bay 3\n", "unit: " + other + "\n");
    assertThat(check.rules()).containsExactlyElementsOf(rule.isEmpty() ? List.of() : List.of(rule));
    if (!rule.isEmpty()) {
      Result result = check.results().get(0);
      assertThat(result.message().fact()).startsWith("the name \"" + other + "\"");
      assertThat(result.related()).hasSize(1);
    }
  }
}
