package org.headhouse.linter.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.headhouse.linter.FaultySites;
import org.headhouse.linter.Written;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.Rule;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The page of all messages, so that somebody can read them in one go. */
@Tag("written")
class MessagesPageTest {
  private static final Path FILE = Path.of("docs", "messages.md");

  /** What differs from site to site: names, values and numbers. */
  private static final Pattern VARIABLE = Pattern.compile("\"[^\"]*\"|[0-9][0-9.,/-]*");

  private static final int LONGEST_FACT = 100;

  @Test
  void hasEveryMessageThatExamplesReach() throws IOException {
    Written.compare(FILE, page(messages()));
  }

  /** A headline fits into a line of a terminal, but for long names. */
  @Test
  void aFactIsShort() throws IOException {
    List<String> facts = new ArrayList<>();
    for (Map<String, Result> variants : messages().values()) {
      variants.values().forEach(one -> facts.add(one.message().fact()));
    }
    assertThat(facts)
        .filteredOn(fact -> VARIABLE.matcher(fact).replaceAll("12345").length() > LONGEST_FACT)
        .isEmpty();
  }

  /** The results of each rule, those that say the same of other values but once. */
  private static Map<String, Map<String, Result>> messages() throws IOException {
    Map<String, Map<String, Result>> messages = new LinkedHashMap<>();
    for (Rule rule : BuiltInRules.all()) {
      String id = rule.descriptor().id();
      messages.put(id, new LinkedHashMap<>());
      add(RulePagesTest.example(id), messages);
    }
    FaultySites.check().results().forEach(result -> add(result, messages));
    return messages;
  }

  private static void add(Result result, Map<String, Map<String, Result>> messages) {
    String form = VARIABLE.matcher(result.message().text()).replaceAll("…");
    messages
        .computeIfAbsent(result.rule(), id -> new LinkedHashMap<>())
        .putIfAbsent(result.level().word() + form, result);
  }

  private static String page(Map<String, Map<String, Result>> messages) {
    StringBuilder text = new StringBuilder();
    text.append("# Messages\n\n")
        .append(
            "Made from the examples of the rules' pages and from the faulty sample sites; do not edit.\n")
        .append(
            "Each message has the fact, why it matters, and the fix. [The rules](rules.md) say more.\n");
    String subject = "";
    for (Map.Entry<String, Map<String, Result>> entry : messages.entrySet()) {
      String id = entry.getKey();
      String its = id.substring(0, id.indexOf('.'));
      if (!its.equals(subject)) {
        subject = its;
        text.append("\n## ").append(subject).append('\n');
      }
      text.append("\n### [`%s`](rules.md#%s)\n".formatted(id, id.replace(".", "")));
      entry.getValue().values().forEach(result -> append(result, text));
    }
    return text.toString();
  }

  private static void append(Result result, StringBuilder text) {
    Message message = result.message();
    text.append("\n- **%s:** %s\n".formatted(result.level().word(), escaped(message.fact())))
        .append("  - why: %s\n".formatted(escaped(message.reason())))
        .append("  - fix: %s\n".formatted(escaped(message.remedy())));
  }

  private static String escaped(String text) {
    return TextReport.printable(text).replaceAll("([*_<>`\\[\\]\\\\|])", "\\\\$1");
  }
}
