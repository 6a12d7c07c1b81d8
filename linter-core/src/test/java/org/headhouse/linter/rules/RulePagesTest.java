package org.headhouse.linter.rules;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.Fixing;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.Rule;
import org.headhouse.linter.source.Region;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The page of each rule is a test: its first example breaks exactly that rule, there. */
class RulePagesTest {
  private static final Pattern MARK = Pattern.compile("#( *)(\\^+)|#\\^ first-column");

  static Stream<Rule> rules() {
    return BuiltInRules.all().stream();
  }

  static Stream<String> ids() {
    return rules().map(rule -> rule.descriptor().id());
  }

  /**
   * Bytes that are no text, a file of a mebibyte, two files at once and a character that nobody
   * sees are on no page.
   */
  private static final Set<String> WITHOUT_EXAMPLE =
      Set.of("file.encoding", "file.too-large", "file.line-separator", "site.duplicate-id");

  static Stream<String> idsWithExamples() {
    return ids().filter(id -> !WITHOUT_EXAMPLE.contains(id));
  }

  @Test
  void onlyFourPagesHaveNoExample() {
    assertThat(ids().filter(id -> failing(id).block("yaml").isEmpty()))
        .containsExactlyInAnyOrderElementsOf(WITHOUT_EXAMPLE);
  }

  @ParameterizedTest
  @MethodSource("ids")
  void everyRuleHasAPageWithItsParts(String id) {
    RulePage page = RulePage.of(id);
    assertThat(page.title()).isEqualTo("# " + id);
    assertThat(page.sections().keySet())
        .contains("Why", "Breaks the rule", "Sources")
        .isSubsetOf(RulePage.SECTIONS);
    assertThat(page.sections().keySet())
        .containsExactlyElementsOf(
            RulePage.SECTIONS.stream().filter(page.sections()::containsKey).toList());
  }

  /** What the code says of a rule is on its page: the requirement, and what the example gives. */
  @ParameterizedTest
  @MethodSource("rules")
  void thePageSaysWhatTheCodeSays(Rule rule) throws IOException {
    String id = rule.descriptor().id();
    RulePage page = RulePage.of(id);
    String message = message(id);
    assertThat(page.requirement()).isEqualTo(rule.descriptor().requirement());
    assertThat(page.section("Message").text().strip()).isEqualTo(message);
  }

  /** Writes both into every page. */
  static void writePages() throws IOException {
    for (Rule rule : BuiltInRules.all()) {
      String id = rule.descriptor().id();
      RulePage.of(id).write(id, rule.descriptor().requirement(), message(id));
    }
  }

  private static String message(String id) throws IOException {
    Result result = example(id);
    return "```text\n" + result.level().word() + ": " + result.message().text() + "\n```";
  }

  /** The result of the example that breaks a rule. */
  static Result example(String id) throws IOException {
    List<Result> results =
        switch (id) {
          case "file.encoding" -> checkBytes("caf\u00e9".getBytes(ISO_8859_1));
          case "file.too-large" -> checkBytes(new byte[(1 << 20) + 1]);
          case "file.line-separator" ->
              check(SiteInput.text("example.yaml", site() + "# a note\u2028suppressions: []\n"));
          case "site.duplicate-id" -> checkTwoFiles();
          default -> open(check(Marked.of(failing(id).block("yaml")).text, failing(id)));
        };
    assertThat(results).extracting(Result::rule).containsExactly(id);
    return results.get(0);
  }

  private static List<Result> checkBytes(byte[] bytes) throws IOException {
    return check(new SiteInput("example.yaml", most -> bytes));
  }

  private static List<Result> checkTwoFiles() throws IOException {
    return check(
        SiteInput.text("example.yaml", site()), SiteInput.text("example/site.yaml", site()));
  }

  private static String site() throws IOException {
    return RulePage.of("cable.too-long").section("Keeps the rule").block("yaml");
  }

  private static List<Result> check(SiteInput... inputs) throws IOException {
    return open(SiteLinter.builder().build().check(Stream.of(inputs)));
  }

  @ParameterizedTest
  @MethodSource("idsWithExamples")
  void theFirstExampleBreaksThatRuleThere(String id) throws IOException {
    RulePage.Section section = failing(id);
    Marked marked = Marked.of(section.block("yaml"));
    List<Result> results = open(check(marked.text, section));
    assertThat(results).extracting(Result::rule).containsExactly(id);
    Region region = results.get(0).location().region();
    assertThat(region.startLine()).as("line of %s", results).isEqualTo(marked.line);
    if (marked.column > 1) {
      assertThat(region).isEqualTo(Region.onLine(marked.line, marked.column, marked.length));
    }
  }

  @ParameterizedTest
  @MethodSource("idsWithExamples")
  void theSecondExampleIsClean(String id) throws IOException {
    RulePage.Section section = RulePage.of(id).section("Keeps the rule");
    CheckReport report = check(section.block("yaml"), section);
    assertThat(open(report)).isEmpty();
    assertThat(report.notifications()).isEmpty();
  }

  /** What mends the first example gives the second, byte for byte; the page says how far. */
  @ParameterizedTest
  @MethodSource("idsWithExamples")
  void theFixMakesTheSecondExampleOfTheFirst(String id) throws IOException {
    String failing = Marked.of(failing(id).block("yaml")).text;
    RulePage.Section settings = failing(id);
    Fix fix = open(check(failing, settings)).get(0).fix();
    String section = RulePage.of(id).section("Fix").text().strip();
    if (fix == null) {
      assertThat(section).isEmpty();
      return;
    }
    assertThat(section.toLowerCase(Locale.ROOT)).startsWith(fix.kind().word());
    assertThat(Fixing.fix(linter(settings), "example.yaml", failing, fix.kind()))
        .isEqualTo(RulePage.of(id).section("Keeps the rule").block("yaml"));
  }

  @Test
  void parametersAreOnTheirPages() {
    for (Rule rule : BuiltInRules.all()) {
      String section = RulePage.of(rule.descriptor().id()).section("Parameters").text();
      rule.descriptor()
          .parameters()
          .forEach(
              parameter ->
                  assertThat(section)
                      .contains("`" + parameter.name() + "`", "`" + parameter.fallback() + "`"));
    }
  }

  private static RulePage.Section failing(String id) {
    return RulePage.of(id).section("Breaks the rule");
  }

  private static List<Result> open(CheckReport report) {
    return report.results().stream().filter(result -> !result.suppressed()).toList();
  }

  private static CheckReport check(String site, RulePage.Section section) throws IOException {
    return linter(section).checkText("example.yaml", site);
  }

  /** With the policy, the device types and the earlier state that the section has. */
  private static SiteLinter linter(RulePage.Section section) throws IOException {
    SiteLinter.Builder builder = SiteLinter.builder();
    String policy = section.block("yaml policy");
    if (!policy.isEmpty()) {
      builder.policy(SiteInput.text("linter.yaml", policy));
    }
    String types = section.block("yaml device-types");
    if (!types.isEmpty()) {
      builder.deviceTypes(SiteInput.text("device-types.yaml", types));
    }
    String before = section.block("yaml before");
    if (!before.isEmpty()) {
      builder.before(SiteState.of(Stream.of(SiteInput.text("example.yaml", before)), null));
    }
    return builder.build();
  }

  /** An example with the line of its mark taken out. */
  private record Marked(String text, int line, int column, int length) {
    static Marked of(String example) {
      List<String> lines = new ArrayList<>();
      Marked marked = null;
      for (String line : example.split("\n", -1)) {
        Matcher matcher = MARK.matcher(line);
        if (matcher.matches()) {
          boolean first = matcher.group(2) == null;
          marked =
              new Marked(
                  "",
                  lines.size(),
                  first ? 1 : matcher.start(2) + 1,
                  first ? 0 : matcher.group(2).length());
        } else {
          lines.add(line);
        }
      }
      if (marked == null) {
        throw new AssertionError("no mark in\n" + example);
      }
      return new Marked(String.join("\n", lines), marked.line, marked.column, marked.length);
    }
  }
}
