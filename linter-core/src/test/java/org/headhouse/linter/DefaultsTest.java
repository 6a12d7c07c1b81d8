package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What units of a role have in common is said once, and means the same. */
class DefaultsTest {

  private static String with(String text, String other) {
    assertThat(Example.SHORT).contains(text);
    return Example.SHORT.replace(text, other);
  }

  private static String fixed(String site) throws IOException {
    String[] after = new String[1];
    SiteLinter.builder()
        .build()
        .fix(
            Stream.of(SiteInput.text("example.yaml", site)),
            FixKind.PROPOSED,
            one -> after[0] = new String(one.after(), UTF_8));
    return after[0];
  }

  @Test
  void theShortFormKeepsEveryRule() {
    assertThat(Checks.places(Example.SHORT)).isEmpty();
  }

  @Test
  void bothFormsHaveTheSameFigures() {
    assertThat(LineCheck.of(Example.SHORT).figures())
        .isEqualTo(LineCheck.of(Example.SITE).figures());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "conductors: [A, B]   | conductors: [A]      | 10:17 conductors.pair-missing, 10:17 conductors.pair-missing",
        "outdoor: head        | outdoor: local       | 11:14 outdoor.not-from-head, 11:14 outdoor.not-from-head",
        "outdoor: local       | outdoor: head        | 7:19 outdoor.head-not-local",
        "comm-module: fitted  | comm-module: absent  | 9:18 module.absent, 9:18 module.absent, 16:18 module.absent",
      })
  void aResultIsWhereTheDefaultIsWritten(String text, String other, String places) {
    assertThat(String.join(", ", Checks.places(with(text, other)))).isEqualTo(places);
  }

  @Test
  void itNamesTheUnitThatTakesTheDefault() {
    List<Result> results = Checks.of(with("outdoor: head", "outdoor: local")).results();
    assertThat(results)
        .extracting(Result::unit)
        .containsExactlyInAnyOrder("Seedling North", "Hardening Bay");
    assertThat(results)
        .extracting(Result::logical)
        .containsExactlyInAnyOrder("chain/Seedling North/outdoor", "chain/Hardening Bay/outdoor");
    assertThat(results)
        .allSatisfy(
            result -> {
              assertThat(result.related().get(0).text()).isEqualTo("this unit takes the default");
              assertThat(result.message().fact())
                  .isEqualTo(
                      "\"" + result.unit() + "\" is set to its own sensor for light, temperature");
            });
    assertThat(results).extracting(Result::identities).doesNotHaveDuplicates();
  }

  @Test
  void aSuppressionIsForItsUnit() {
    String site =
        with("outdoor: head", "outdoor: local")
            + "suppressions:\n  - {rule: outdoor.not-from-head, unit: Hardening Bay,"
            + " justification: It has a sensor of its own.}\n";
    assertThat(Checks.of(site).results())
        .filteredOn(result -> !result.suppressed())
        .extracting(Result::unit)
        .containsExactly("Seedling North");
  }

  @Test
  void theDefaultIsFixedWhereAllThatTakeItAgree() throws IOException {
    assertThat(fixed(with("outdoor: head", "outdoor: local"))).isEqualTo(Example.SHORT);
  }

  @Test
  void theFixSaysThatItIsForAll() {
    assertThat(Checks.of(with("outdoor: head", "outdoor: local")).results().get(0).fix())
        .extracting(fix -> fix.description())
        .asString()
        .endsWith(", in the defaults for all units that take it from there");
  }

  @Test
  void whatAUnitSaysItselfComesFirst() throws IOException {
    String site =
        with("outdoor: head", "outdoor: local")
            .replace("address: 3\n", "address: 3\n    outdoor: head\n");
    assertThat(Checks.of(site).results())
        .extracting(Result::unit)
        .containsExactly("Seedling North");
    assertThat(fixed(site)).contains("    outdoor: head\n  ".strip());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "outdoor: head     | outdor: head      | 11:5 schema.unknown-key",
        "outdoor: head     | outdoor: none     | 11:14 schema.bad-value",
        "outdoor: head     | outdoor: []       | 11:14 schema.wrong-type",
        "outdoor: head     | stale-after: 0 s  | 11:18 schema.out-of-range",
        "outdoor: head     | address: 7        | 11:5 schema.unknown-key",
        "outdoor: head     | termination: none | 11:5 schema.unknown-key",
        "'  follower:'     | '  folower:'      | 8:3 schema.unknown-key",
        "head: {outdoor: local} | head: local  | 7:9 schema.wrong-type",
      })
  void aFaultInADefaultIsOneResult(String text, String other, String place) {
    assertThat(Checks.places(with(text, other)).stream().filter(one -> one.contains("schema")))
        .contains(place)
        .filteredOn(one -> one.startsWith(place.substring(0, place.indexOf(' '))))
        .hasSize(1);
  }

  @Test
  void whatNeitherHasIsMissing() {
    assertThat(Checks.places(with("    comm-module: fitted\n    conductors: [A, B]\n", "")))
        .containsExactly(
            "18:5 schema.missing-key",
            "18:5 schema.missing-key",
            "23:5 schema.missing-key",
            "23:5 schema.missing-key");
  }

  /** A default is given to units only. */
  @Test
  void aRepeaterTakesNone() {
    String site =
        with(
            "  - unit: Hardening Bay\n",
            """
              - repeater: Boiler
                termination: {in: 120 ohm, out: 120 ohm}
                cable-to-next: 10 m
              - unit: Hardening Bay
            """);
    assertThat(Checks.places(site)).noneMatch(place -> place.contains("schema"));
  }
}
