package org.headhouse.linter.report;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.headhouse.linter.rule.RuleDescriptor;

/**
 * The linter and its rules, as SARIF 2.1.0 has them (chapters 3.18, 3.19 and 3.49).
 *
 * @param pages the page of a rule in Markdown, by its id
 */
record SarifTool(List<RuleDescriptor> rules, Function<String, Optional<String>> pages) {
  private static final String EXAMPLE = "\n## Breaks the rule";
  private static final String TITLE = "# ";

  /**
   * Writes the property.
   *
   * @param broken the rules with results, whose pages are written: a host shows them beside a
   *     result, and a clean run needs none
   */
  void write(JsonWriter json, Set<String> broken) {
    json.writeObjectPropertyStart("tool");
    json.writeObjectPropertyStart("driver");
    json.writeStringProperty("name", "Headhouse Linter");
    ToolVersion.text().ifPresent(version -> json.writeStringProperty("version", version));
    json.writeArrayPropertyStart("rules");
    for (RuleDescriptor rule : rules) {
      json.writeStartObject();
      json.writeStringProperty("id", rule.id());
      SarifPlaces.text(json, "shortDescription", rule.requirement());
      if (broken.contains(rule.id())) {
        pages.apply(rule.id()).ifPresent(page -> help(json, page));
      }
      json.writeObjectPropertyStart("defaultConfiguration");
      json.writeStringProperty("level", rule.level().word());
      json.writeEndObject();
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
    json.writeEndObject();
  }

  private static void help(JsonWriter json, String page) {
    SarifPlaces.text(json, "fullDescription", plain(page));
    json.writeObjectPropertyStart("help");
    json.writeStringProperty("text", plain(page));
    json.writeStringProperty("markdown", page);
    json.writeEndObject();
  }

  /** What a page says before its examples, without headings, marks and blocks of code. */
  private static String plain(String page) {
    int example = page.indexOf(EXAMPLE);
    String words =
        (example < 0 ? page : page.substring(0, example)).replaceAll("(?s)```.*?```", "");
    return words
        .lines()
        .filter(line -> !line.startsWith(TITLE) && !line.startsWith("#" + TITLE))
        .map(line -> line.replace("`", "").replace("**", ""))
        .collect(Collectors.joining("\n"))
        .replaceAll("\n{3,}", "\n\n")
        .strip();
  }
}
