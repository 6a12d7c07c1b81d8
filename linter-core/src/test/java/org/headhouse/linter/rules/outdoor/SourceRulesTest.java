package org.headhouse.linter.rules.outdoor;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Replacement;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every follower takes the readings of the station from the head unit: common practice, no source.
 */
class SourceRulesTest {
  private static final LineCheck SITE =
      LineCheck.of(new SiteText().unit("120 ohm", "10 m").unit("120 ohm", ""))
          .with("readings: [light]", "readings: [light, rain]")
          .with("{light: local}", "{light: local, rain: local}")
          .with("{light: head}", "{light: head, rain: head}");

  private static LineCheck of(String head, String follower) {
    return SITE.with("{light: local, rain: local}", "{" + head + "}")
        .with("{light: head, rain: head}", "{" + follower + "}");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "light: local, rain: local  | light: head, rain: head  | |",
        "light: none, rain: local   | light: head, rain: head  | the head unit \"Head House\" is set to none for light; set the unit and the file to light: local | Set \"Head House\" to take light as local",
        "light: local, rain: head   | light: head, rain: head  | the head unit \"Head House\" is set to head for rain; set the unit and the file to rain: local | Set \"Head House\" to take rain as local",
        "light: local               | light: head, rain: head  | the head unit \"Head House\" does not say where it takes rain from; set the unit and the file to rain: local | Set \"Head House\" to take rain as local",
        "''                         | light: head, rain: head  | the head unit \"Head House\" does not say where it takes light, rain from; set the unit and the file to light: local, rain: local | Set \"Head House\" to take light, rain as local",
        "light: local, rain: local  | light: head, rain: none  | \"Bay 2\" is set to none for rain; set the unit and the file to rain: head | Set \"Bay 2\" to take rain from the head unit",
        "light: local, rain: local  | light: local, rain: head | \"Bay 2\" is set to its own sensor for light; set the unit and the file to light: head | Set \"Bay 2\" to take light from the head unit",
        "light: local, rain: local  | rain: head               | \"Bay 2\" does not say where it takes light from; set the unit and the file to light: head | Set \"Bay 2\" to take light from the head unit",
        "light: local, rain: local  | ''                       | \"Bay 2\" does not say where it takes light, rain from; set the unit and the file to light: head, rain: head | Set \"Bay 2\" to take light, rain from the head unit",
        // What is not understood may be right.
        "light: lokal, rain: local  | light: head, rain: head  | \"light\" cannot be \"lokal\"; write local | Write local",
        "light: local, rain: local  | light: haed, rain: head  | \"light\" cannot be \"haed\"; write head | Write head",
        // A reading that the station does not measure.
        "light: local, rain: local  | light: head, rain: head, humidity: head | \"Bay 2\" expects humidity from the head unit, but the station does not measure it; set the unit and the file to humidity: none, or add the sensor | Let \"Bay 2\" do without humidity",
        "light: local, rain: local, humidity: head | light: head, rain: head | the head unit \"Head House\" expects humidity from the head unit, but the station does not measure it; set the unit and the file to humidity: none, or add the sensor | Let \"Head House\" do without humidity",
        "light: local, rain: local, humidity: local | light: head, rain: head, humidity: none | |",
      })
  void whereReadingsComeFrom(String head, String follower, String reported, String mended) {
    List<Result> results = of(unquoted(head), unquoted(follower)).results();
    assertThat(results.stream().map(one -> one.message().fact() + "; " + one.message().remedy()))
        .containsExactlyElementsOf(reported == null ? List.of() : List.of(reported));
    assertThat(results)
        .allSatisfy(one -> assertThat(requireNonNull(one.fix()).description()).isEqualTo(mended));
  }

  private static String unquoted(String keys) {
    return keys == null ? "" : keys;
  }

  /** Where a unit says nothing at all, its name is marked; where it says something, the key. */
  @Test
  void theNarrowestPlaceIsMarked() {
    assertThat(of("light: local", "light: head, rain: head").marked("outdoor.head-not-local"))
        .isEqualTo("outdoor");
    LineCheck nothing = SITE.with("    outdoor: {light: local, rain: local}\n", "");
    assertThat(nothing.marked("outdoor.head-not-local")).isEqualTo("Head House");
    LineCheck silent = SITE.with("    outdoor: {light: head, rain: head}\n", "");
    assertThat(silent.marked("outdoor.not-from-head")).isEqualTo("Bay 2");
    assertThat(of("light: local, rain: local", "light: head").marked("outdoor.not-from-head"))
        .isEqualTo("outdoor");
  }

  /** A station at another unit is one mistake, and so is a role. */
  @ParameterizedTest
  @CsvSource({
    "at: Head House, at: Bay 2, station.not-at-head",
    "role: head, role: follower, head.missing",
  })
  void whatComesOfAnotherMistakeIsNotReported(String text, String other, String rule) {
    LineCheck check = SITE.with(text, other);
    if (rule.startsWith("station")) {
      check =
          check
              .with("{light: local, rain: local}", "{light: @, rain: @}")
              .with("{light: head, rain: head}", "{light: local, rain: local}")
              .with("@", "head");
    }
    assertThat(check.rules()).containsExactly(rule);
  }

  @Test
  void whereTheStationOrItsReadingsAreNotUnderstoodNothingIsJudged() {
    LineCheck check = of("light: none, rain: none", "light: none, rain: none, humidity: head");
    assertThat(check.rules()).hasSize(5);
    for (String readings : List.of("readings: 5", "raedings: [light]")) {
      assertThat(check.with("readings: [light, rain]", readings).rules())
          .isNotEmpty()
          .noneMatch(rule -> rule.startsWith("outdoor."));
    }
    assertThat(check.with("weather-station: {", "weather-mast: {").rules())
        .noneMatch(rule -> rule.startsWith("outdoor."));
    assertThat(check.with("readings: [light, rain]", "readings: [light, rain, moon]").rules())
        .contains("outdoor.not-from-head", "outdoor.head-not-local")
        .doesNotContain("outdoor.not-measured");
    assertThat(SITE.with("outdoor: {light: head, rain: head}", "outdoor: [head]").rules())
        .isNotEmpty()
        .noneMatch(rule -> rule.startsWith("outdoor."));
    assertThat(SITE.with("outdoor: {light: local, rain: local}", "outdoor: [local]").rules())
        .isNotEmpty()
        .noneMatch(rule -> rule.startsWith("outdoor."));
  }

  /** Units that lose their readings close: common practice, no source. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "vents: none                           |",
        "on-stale-readings: hold               |",
        "vents: roof, on-stale-readings: close |",
        "vents: roof, on-stale-readings: shut  | \"on-stale-readings\" cannot be \"shut\"",
        "vents: roof                           | \"Bay 2\" moves roof vents but the file does not say what it does when readings stop",
        "vents: side, on-stale-readings: hold  | \"Bay 2\" moves side vents but is set to hold when readings stop",
        "vents: roof-and-side, on-stale-readings: alarm | \"Bay 2\" moves roof-and-side vents but is set to alarm when readings stop",
      })
  void ventsCloseWithoutReadings(String keys, String fact) {
    LineCheck check =
        SITE.with("address: 2\n", "address: 2\n    " + keys.replace(", ", "\n    ") + "\n");
    assertThat(check.results().stream().map(one -> one.message().fact()))
        .containsExactlyElementsOf(fact == null ? List.of() : List.of(fact));
  }

  /** A unit that is live is set on the site first. */
  @Test
  void atALiveSiteAFixIsOnlyProposed() {
    LineCheck check = of("light: local, rain: local", "light: none, rain: head");
    assertThat(kind(check)).isEqualTo(FixKind.SAFE);
    assertThat(kind(check.with("stage: planned", "stage: commissioned")))
        .isEqualTo(FixKind.PROPOSED);
  }

  private static FixKind kind(LineCheck check) {
    Fix fix =
        check.results().stream()
            .filter(one -> one.rule().equals("outdoor.not-from-head"))
            .findFirst()
            .orElseThrow()
            .fix();
    return requireNonNull(fix).kind();
  }

  /** All that is missing is written at once. */
  @Test
  void aUnitThatSaysNothingGetsAllItsSources() {
    LineCheck check = SITE.with("    outdoor: {light: head, rain: head}\n", "");
    Fix fix = requireNonNull(check.results().get(0).fix());
    assertThat(fix.replacements())
        .singleElement()
        .extracting(Replacement::text)
        .asString()
        .contains("outdoor: {light: head, rain: head}");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "vents: roof                          | vents: roof | on-stale-readings: close",
        "vents: side, on-stale-readings: hold | hold        | close",
      })
  void closingIsWrittenWhereItBelongs(String keys, String marked, String text) {
    LineCheck check =
        SITE.with("address: 2\n", "address: 2\n    " + keys.replace(", ", "\n    ") + "\n");
    assertThat(check.marked("outdoor.unsafe-fallback")).isEqualTo(marked.replace("vents: ", ""));
    assertThat(requireNonNull(check.results().get(0).fix()).replacements())
        .singleElement()
        .extracting(replacement -> replacement.text().strip())
        .isEqualTo(text);
  }
}
