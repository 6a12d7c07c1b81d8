package org.headhouse.linter.rules;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.headhouse.linter.JsonText;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.Written;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.Rule;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.schema.FileKind;
import org.headhouse.linter.schema.PublishedSchemas;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The schemas name the rules, so that any editor that reads them can complete an id. They are
 * written from the rules, and what they name is what the linter takes.
 */
class RuleIdsInSchemasTest {
  private static final Path SCHEMAS =
      Path.of("src", "main", "resources", "org", "headhouse", "linter", "schema");
  private static final String LIST =
      "(for completion; a rule of your own may have any id\\.\",\\s+\"enum\": \\[\n)[^]]*(\n +])";
  private static final String KEYS =
      "(for completion; a rule of your own may have any id\\.\",\\s+\"type\": \"object\",\\s+\"properties\": \\{\n).*?(\n      })";

  private static List<RuleDescriptor> rules() {
    return BuiltInRules.all().stream().map(Rule::descriptor).toList();
  }

  private static boolean canBeChanged(RuleDescriptor rule) {
    return !rule.foundation();
  }

  private static boolean canBeSuppressed(RuleDescriptor rule) {
    return !rule.foundation() && !rule.subject().equals("suppression");
  }

  private static String with(
      FileKind kind, String part, List<RuleDescriptor> rules, Function<RuleDescriptor, String> form)
      throws IOException {
    String text = Files.readString(SCHEMAS.resolve(kind.schemaFile()));
    String lines = rules.stream().map(form).collect(Collectors.joining(",\n"));
    Matcher matcher = Pattern.compile(part, Pattern.DOTALL).matcher(text);
    assertThat(matcher.find()).as("the schema has a place for the rules").isTrue();
    return text.substring(0, matcher.end(1)) + lines + text.substring(matcher.start(2));
  }

  @Test
  @Tag("written")
  void theSchemaOfSitesListsWhatCanBeSuppressed() throws IOException {
    Written.compare(
        SCHEMAS.resolve(FileKind.SITE.schemaFile()),
        with(
            FileKind.SITE,
            LIST,
            rules().stream().filter(RuleIdsInSchemasTest::canBeSuppressed).toList(),
            rule -> " ".repeat(16) + '"' + rule.id() + '"'));
  }

  @Test
  @Tag("written")
  void theSchemaOfThePolicyHasAKeyForEachRuleThatItCanChange() throws IOException {
    Written.compare(
        SCHEMAS.resolve(FileKind.POLICY.schemaFile()),
        with(
            FileKind.POLICY,
            KEYS,
            rules().stream().filter(RuleIdsInSchemasTest::canBeChanged).toList(),
            rule ->
                "        \"%s\": {\"$ref\": \"#/$defs/rule-setting\", \"description\": \"%s\"}"
                    .formatted(
                        rule.id(),
                        new String(
                            JsonStringEncoder.getInstance().quoteAsString(rule.requirement())))));
  }

  private static JsonNode schema(FileKind kind) {
    return JsonText.read(PublishedSchemas.text(kind));
  }

  /** The linter itself says which ids a suppression may have. */
  @Test
  void aSuppressionTakesWhatIsListedAndNothingElse() {
    List<String> listed = new ArrayList<>();
    schema(FileKind.SITE)
        .at("/$defs/suppression/properties/rule/anyOf/0/enum")
        .forEach(id -> listed.add(id.asText()));
    List<String> taken =
        rules().stream()
            .map(RuleDescriptor::id)
            .filter(
                id ->
                    Checks.of(
                            Example.SITE
                                + "suppressions:\n  - rule: %s\n    justification: Tried.\n"
                                    .formatted(id))
                        .results()
                        .stream()
                        .map(Result::rule)
                        .noneMatch("suppression.unknown-rule"::equals))
            .toList();
    assertThat(listed).containsExactlyElementsOf(taken).contains("address.gap");
  }

  @Test
  void thePolicyTakesWhatIsListedAndNothingElse() throws IOException {
    List<String> listed = new ArrayList<>();
    schema(FileKind.POLICY)
        .at("/properties/rules/properties")
        .fieldNames()
        .forEachRemaining(listed::add);
    List<String> taken = new ArrayList<>();
    for (RuleDescriptor rule : rules()) {
      if (policy(rule.id()).stream()
          .noneMatch(one -> one.location().file().equals("linter.yaml"))) {
        taken.add(rule.id());
      }
    }
    assertThat(listed).containsExactlyElementsOf(taken).contains("address.gap");
  }

  private static List<Result> policy(String rule) throws IOException {
    String text = "format: 1\nrule-set: 1\nrules: {%s: {level: note}}\n".formatted(rule);
    return SiteLinter.builder()
        .policy(SiteInput.text("linter.yaml", text))
        .withoutBaseline()
        .build()
        .checkText("example.yaml", Example.SITE)
        .results();
  }
}
