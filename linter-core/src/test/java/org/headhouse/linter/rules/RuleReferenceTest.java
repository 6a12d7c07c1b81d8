package org.headhouse.linter.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.Written;
import org.headhouse.linter.rule.Rule;
import org.headhouse.linter.rule.RuleDescriptor;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The reference of the rules is made from their pages, and these have requirement and message from
 * the code.
 */
@Tag("written")
class RuleReferenceTest {
  private static final Path FILE = Path.of("docs", "rules.md");
  private static final String PAGES = "../src/main/resources/org/headhouse/linter/rules/";

  private static final String INTRODUCTION =
      """
      # Rules

      This reference is made from the pages of the rules; do not edit it. Each page has an example that
      breaks the rule and one that keeps it. Both are run as tests. [All messages](messages.md) have a
      page of their own.

      One mistake gives one result. "Yields to" names other rules: if one of them reports the cause,
      the rule is silent. Two rules can yield to each other in different cases; their text says
      when. Every rule skips values that are missing, and values that a rule on the form of the file
      (`file`, `yaml`, `schema`) reports.

      """;

  /** Subjects in the order of the reference, each with the first words of the ids of its rules. */
  private static final List<Subject> SUBJECTS =
      List.of(
          new Subject("Reading a file", "file", "yaml", "schema"),
          new Subject("Names and addresses", "address", "name", "reference", "site"),
          new Subject("Units and the weather station", "head", "module", "station", "firmware"),
          new Subject("Outdoor readings and vents", "outdoor"),
          new Subject("Terminators", "termination"),
          new Subject("Conductors and cable", "conductors", "cable", "stub", "run"),
          new Subject("Load, bias and signal", "segment", "driver", "bias", "signal"),
          new Subject("Serial line and traffic", "serial", "traffic", "equipment"),
          new Subject("Supervision and networks", "supervision", "network"),
          new Subject("Commissioning record", "commissioning"),
          new Subject("Changes", "change"),
          new Subject("Suppressions and drafts", "suppression", "draft"));

  @Test
  void isMadeFromThePages() throws IOException {
    if (Written.anew()) {
      RulePagesTest.writePages();
    }
    Written.compare(FILE, reference());
  }

  @Test
  void everyRuleHasOneSubject() {
    assertThat(SUBJECTS.stream().flatMap(Subject::rules))
        .containsExactlyInAnyOrderElementsOf(
            BuiltInRules.all().stream().map(Rule::descriptor).toList());
  }

  private static String reference() {
    StringBuilder text = new StringBuilder(INTRODUCTION);
    for (Subject subject : SUBJECTS) {
      text.append("- [%s](#%s): ".formatted(subject.title, subject.anchor()))
          .append(links(subject.rules().map(RuleDescriptor::id)))
          .append('\n');
    }
    for (Subject subject : SUBJECTS) {
      text.append(
          "\n## %s\n\n| rule | level | requirement |\n|---|---|---|\n".formatted(subject.title));
      subject.rules().forEach(rule -> appendRow(rule, text));
      subject.rules().forEach(rule -> append(rule, text));
    }
    return text.toString();
  }

  private static void appendRow(RuleDescriptor rule, StringBuilder text) {
    text.append(
        "| %s | %s | %s |\n"
            .formatted(
                links(Stream.of(rule.id())),
                rule.level().word(),
                rule.requirement().replace("|", "\\|").replace('\n', ' ')));
  }

  private static String links(Stream<String> ids) {
    return ids.map(id -> "[`%s`](#%s)".formatted(id, id.replace(".", "")))
        .collect(Collectors.joining(", "));
  }

  private static void append(RuleDescriptor rule, StringBuilder text) {
    RulePage page = RulePage.of(rule.id());
    text.append("\n### %s\n\n%s\n\n".formatted(rule.id(), page.requirement()))
        .append(
            "Level: %s%s."
                .formatted(
                    rule.level().word(),
                    rule.foundation() ? ", always on, because other rules rely on it" : ""))
        .append(
            rule.yieldsTo().isEmpty() ? "" : " Yields to: " + links(rule.yieldsTo().stream()) + ".")
        .append(" Examples: [page](%s%s.md).\n".formatted(PAGES, rule.id()));
    for (String title : List.of("Why", "Message", "Fix", "Parameters", "Sources")) {
      append(title, page, text);
    }
  }

  private static void append(String title, RulePage page, StringBuilder text) {
    String section = page.section(title).text().strip();
    if (!section.isEmpty()) {
      text.append("\n#### %s\n\n%s\n".formatted(title, section));
    }
  }

  private record Subject(String title, Set<String> firstWords) {
    Subject(String title, String... firstWords) {
      this(title, Set.of(firstWords));
    }

    String anchor() {
      return title.toLowerCase(Locale.ROOT).replace(",", "").replace(' ', '-');
    }

    Stream<RuleDescriptor> rules() {
      return BuiltInRules.all().stream()
          .map(Rule::descriptor)
          .filter(rule -> firstWords.contains(rule.id().split("\\.", 2)[0]));
    }
  }
}
