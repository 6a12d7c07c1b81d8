package org.headhouse.linter.fix;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.headhouse.linter.Fixing;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.FixedSite;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** One fault in the example, in one style, and the lines that mending changes. */
class FixesTest {
  private static final String HEAD_OUTDOOR = "    outdoor: {light: local, temperature: local}\n";
  private static final String OUTDOOR = "    outdoor: {light: head, temperature: head}\n";
  private static final String ZONES = "supervision:\n  link: serial\n";

  private static FixedSite fix(String text, FixKind kind) {
    return Fixing.outcome(Checks.linter(), SiteInput.text("example.yaml", text), kind);
  }

  private static Arguments at(String what, String valid, String faulty, String mended) {
    return Arguments.of(what, Example.with(valid, faulty), Example.with(valid, mended));
  }

  private static Arguments behind(String what, String faulty, String mended) {
    return Arguments.of(what, Example.SITE + faulty, Example.SITE + mended);
  }

  static Stream<Arguments> styles() {
    return Stream.of(
        at(
            "a key in a block",
            HEAD_OUTDOOR,
            "    outdoor:\n      light: local # roof\n      # south\n",
            "    outdoor:\n      light: local # roof\n      temperature: local\n      # south\n"),
        at(
            "a key in flow",
            HEAD_OUTDOOR,
            "    outdoor: { light: local }  # roof\n",
            "    outdoor: { light: local, temperature: local }  # roof\n"),
        at(
            "a key in flow over lines",
            HEAD_OUTDOOR,
            "    outdoor: {\n      light: local # roof\n    }\n",
            "    outdoor: {\n      light: local, temperature: local # roof\n    }\n"),
        at(
            "keys in an empty mapping",
            HEAD_OUTDOOR,
            "    outdoor: {}\n",
            "    outdoor: {light: local, temperature: local}\n"),
        at("a value in single quotes", "role: head", "role: 'haed'", "role: 'head'"),
        at("a value in double quotes", "role: head", "role: \"haed\" # x", "role: \"head\" # x"),
        at(
            "a value with an anchor and a tag",
            "role: head",
            "role: !!str &r haed",
            "role: !!str &r head"),
        at("a key in quotes", "    role: head", "    \"rolle\": head", "    \"role\": head"),
        at("a number in quotes", "address: 1", "address: \"1\"", "address: 1"),
        at("a truth value of YAML 1.1", "shielded: true", "shielded: yes", "shielded: true"),
        at("a number with a leading zero", "address: 2", "address: 02", "address: 2"),
        at(
            "a number that is text",
            "site: example\n",
            "site: example\ntitle: 12\n",
            "site: example\ntitle: \"12\"\n"),
        at(
            "a conductor in a block",
            "    conductors: [A, B, G]\n",
            "    conductors:\n    - B   # red\n    - G\n",
            "    conductors:\n    - A\n    - B   # red\n    - G\n"),
        at("a conductor behind the first", "[A, B, G]", "[A, G]", "[A, B, G]"),
        behind(
            "a zone that is missing, in flow",
            ZONES + "  zones: [Propagation, Seedling North,]\n",
            ZONES + "  zones: [Propagation, Seedling North, Hardening Bay,]\n"),
        behind(
            "a zone that is missing, in a block without an end",
            ZONES + "  zones:\n  - Propagation\n  - Seedling North",
            ZONES + "  zones:\n  - Propagation\n  - Seedling North\n  - Hardening Bay"),
        behind(
            "a zone that is misspelt",
            ZONES + "  zones: [Propagatoin, 'Seedlin North', Hardening Bay]\n",
            ZONES + "  zones: [Propagation, 'Seedling North', Hardening Bay]\n"),
        Arguments.of(
            "a name and what refers to it",
            Example.with("unit: Hardening Bay", "unit: \"Hardening Bay \"")
                + ZONES
                + "  zones: [Propagation, Seedling North, 'Hardening Bay ']\n",
            Example.with("unit: Hardening Bay", "unit: \"Hardening Bay\"")
                + ZONES
                + "  zones: [Propagation, Seedling North, 'Hardening Bay']\n"),
        at(
            "what shows only once a role is understood",
            "    role: follower\n    address: 2\n",
            "    role: folower\n    address: 4\n",
            "    role: follower\n    address: 2\n"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("styles")
  void keepsTheStyle(String what, String faulty, String mended) {
    keepsTheStyle(what, faulty, mended, FixKind.SAFE);
  }

  /**
   * Where ground is landed has to be looked at on site, and a zone may be meant for another unit.
   */
  static Stream<Arguments> stylesOfProposedFixes() {
    return Stream.of(
        behind(
            "a zone that is there twice, in flow",
            ZONES + "  zones: [Propagation, Seedling North, Propagation, Hardening Bay]\n",
            ZONES + "  zones: [Propagation, Seedling North, Hardening Bay]\n"),
        behind(
            "a zone that is there twice, in a block",
            ZONES
                + "  zones:\n    - Propagation # a\n    - Propagation\n    - Seedling North\n    - Hardening Bay\n",
            ZONES + "  zones:\n    - Propagation # a\n    - Seedling North\n    - Hardening Bay\n"),
        at(
            "the last conductor in a block",
            "    conductors: [A, B, G]\n",
            "    conductors:\n      - A\n      - B # red\n",
            "    conductors:\n      - A\n      - B # red\n      - G\n"),
        at("all conductors", "[A, B, G]", "[]", "[A, B, G]"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("stylesOfProposedFixes")
  void proposedFixesKeepTheStyle(String what, String faulty, String mended) {
    keepsTheStyle(what, faulty, mended, FixKind.PROPOSED);
  }

  private static void keepsTheStyle(String what, String faulty, String mended, FixKind kind) {
    for (String end : List.of("\n", "\r\n")) {
      String text = faulty.replace("\n", end);
      assertThat(Checks.lines(text)).as(what).isNotEmpty();
      FixedSite fixed = fix(text, kind);
      assertThat(new String(fixed.after(), UTF_8)).isEqualTo(mended.replace("\n", end));
      assertThat(fixed.remaining()).isEmpty();
    }
  }

  static Stream<Arguments> anchors() {
    String shared = "    outdoor: &shared {light: %s, temperature: head}\n";
    String alias = "    outdoor: *shared\n";
    String two = Example.SITE.replaceFirst(Pattern.quote(OUTDOOR), "@").replace(OUTDOOR, alias);
    String end =
        Example.with("    termination: none\n", "    termination: *ends\n")
            .replaceFirst("termination: 120 ohm", "termination: &ends 120 ohm");
    return Stream.of(
        Arguments.of(
            "all that use it have the result",
            two.replace("@", shared.formatted("local").stripTrailing() + "\n"),
            two.replace("@", shared.formatted("head"))),
        Arguments.of(
            "an alias gives way to a value of its own",
            end,
            end.replace("termination: *ends", "termination: none")));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("anchors")
  void changesAnAnchorOnlyForAll(String what, String faulty, String mended) {
    assertThat(new String(fix(faulty, FixKind.PROPOSED).after(), UTF_8)).as(what).isEqualTo(mended);
  }

  @Test
  void saysThatAnAnchorServesSeveral() {
    String text =
        Example.SITE
            .replaceFirst(
                "outdoor: \\{light: head, temperature: head}",
                "outdoor: &shared {light: local, temperature: head}")
            .replace(OUTDOOR, "    outdoor: *shared\n");
    assertThat(Checks.of(text).results())
        .extracting(Result::fix)
        .extracting(fix -> fix == null ? "" : fix.description())
        .containsExactly(
            "Set \"Seedling North\" to take light from the head unit, at the anchor &shared for all that use it",
            "Set \"Hardening Bay\" to take light from the head unit, at the anchor &shared for all that use it");
  }

  @Test
  void leavesAnAnchorThatIsRightForOthers() {
    String text =
        Example.SITE
            .replaceFirst(
                "outdoor: \\{light: local, temperature: local}",
                "outdoor: &shared {light: local, temperature: local}")
            .replaceFirst("outdoor: \\{light: head, temperature: head}", "outdoor: *shared");
    List<Result> results = Checks.of(text).results();
    assertThat(results).hasSize(2);
    assertThat(results).extracting(Result::fix).containsOnlyNulls();
    assertThat(fix(text, FixKind.PROPOSED).isChanged()).isFalse();
  }

  /** What is accepted on purpose stays, and so does a fault whose fix would make another. */
  @Test
  void leavesWhatIsAccepted() {
    String text =
        Example.with("termination: none", "termination: 120 ohm")
            + """
            suppressions:
              - rule: termination.mid-line
                justification: Spare terminator, taken out at the next visit.
            """;
    assertThat(fix(text, FixKind.PROPOSED).isChanged()).isFalse();
  }

  @Test
  void aCommissionedSiteIsOnlyMendedOnRequest() {
    String text =
        Example.with("stage: planned", "stage: commissioned").replace("address: 3", "address: 4");
    Fix fix =
        Checks.of(text).results().stream()
            .filter(result -> result.rule().equals("address.gap"))
            .map(Result::fix)
            .findFirst()
            .orElseThrow();
    assertThat(fix.kind()).isEqualTo(FixKind.PROPOSED);
    assertThat(fix(text, FixKind.SAFE).isChanged()).isFalse();
    assertThat(fix(text, FixKind.PROPOSED).applied()).hasSize(1);
  }
}
