package org.headhouse.linter.rules;

import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Collectors;
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

  @Test
  void isMadeFromThePages() throws IOException {
    if (Written.anew()) {
      RulePagesTest.writePages();
    }
    Written.compare(FILE, reference());
  }

  private static String reference() {
    StringBuilder text = new StringBuilder();
    text.append("# Rules\n\n")
        .append("Made from the pages of the rules; do not edit. Each page has an example that\n")
        .append("breaks the rule and one that keeps it, and both are run as tests.\n")
        .append("[All messages](messages.md) are on a page of their own.\n\n")
        .append("| rule | level | requirement |\n|---|---|---|\n");
    for (Rule rule : BuiltInRules.all()) {
      RuleDescriptor descriptor = rule.descriptor();
      text.append(
          "| %s | %s | %s |\n"
              .formatted(
                  link(descriptor.id()),
                  descriptor.level().word(),
                  RulePage.of(descriptor.id())
                      .requirement()
                      .replace("|", "\\|")
                      .replace('\n', ' ')));
    }
    appendYields(text);
    BuiltInRules.all().forEach(rule -> append(rule.descriptor(), text));
    return text.toString();
  }

  private static void appendYields(StringBuilder text) {
    text.append("\n## Which rule yields to which\n\n")
        .append(
            "One mistake gives one result. A rule on the left is silent where a rule on the right\n")
        .append(
            "reports the cause. Two rules can yield to each other, each in another case; their\n")
        .append(
            "pages say when. Every rule passes over values that are missing, and over those that\n")
        .append("a rule on the form of the file (`file`, `yaml`, `schema`) reports.\n\n")
        .append("| rule | yields to |\n|---|---|\n");
    for (Rule rule : BuiltInRules.all()) {
      RuleDescriptor descriptor = rule.descriptor();
      if (!descriptor.yieldsTo().isEmpty()) {
        text.append(
            "| %s | %s |\n"
                .formatted(
                    link(descriptor.id()),
                    descriptor.yieldsTo().stream()
                        .map(RuleReferenceTest::link)
                        .collect(Collectors.joining(", "))));
      }
    }
  }

  private static String link(String id) {
    return "[`%s`](#%s)".formatted(id, id.replace(".", ""));
  }

  private static void append(RuleDescriptor rule, StringBuilder text) {
    RulePage page = RulePage.of(rule.id());
    text.append("\n## %s\n\n".formatted(rule.id()))
        .append(page.requirement())
        .append(
            "\n\nLevel: %s%s. Examples: [page](%s%s.md).\n"
                .formatted(
                    rule.level().word(),
                    rule.foundation() ? "; other rules count on it, so it is always on" : "",
                    PAGES,
                    rule.id()));
    append("Why", page, text);
    append("Message", page, text);
    append("Fix", page, text);
    append("Parameters", page, text);
    append("Sources", page, text);
  }

  private static void append(String title, RulePage page, StringBuilder text) {
    String section = page.section(title).text().strip();
    if (!section.isEmpty()) {
      text.append("\n### %s\n\n%s\n".formatted(title, section));
    }
  }
}
