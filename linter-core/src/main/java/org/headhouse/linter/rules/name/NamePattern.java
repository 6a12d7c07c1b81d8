package org.headhouse.linter.rules.name;

import java.util.List;
import java.util.stream.Collectors;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.ParameterType;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.rule.TextPattern;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** {@code name.pattern}: silent until the policy has a pattern. */
public final class NamePattern implements SiteRule {
  private static final String NO_WORDS = "a name that matches";
  private static final int MOST_TOLD = 3;

  private static final Parameter<List<TextPattern>> PATTERN =
      new Parameter<>(
          "pattern",
          "a regular expression that the whole name has to match, or a list; then it has to"
              + " match one of them",
          ParameterType.listOf(ParameterType.pattern()),
          "[]");

  private static final Parameter<String> IN_WORDS =
      new Parameter<>(
          "in-words", "what the pattern means, for the message", ParameterType.text(), NO_WORDS);

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "name.pattern",
              "The name of a unit matches the pattern of the policy.",
              Level.WARNING,
              PATTERN,
              IN_WORDS)
          .yieldingTo("name.unreadable");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    List<TextPattern> patterns = context.value(PATTERN);
    if (patterns.isEmpty()) {
      return;
    }
    String wanted = wanted(patterns, context.value(IN_WORDS));
    for (Unit unit : site.units()) {
      String name = unit.name().orNull();
      // name.unreadable reports it, and another name is needed anyway.
      if (name != null
          && !NameUnreadable.isUnreadable(name)
          && patterns.stream().noneMatch(pattern -> pattern.matches(name))) {
        report(unit, site, wanted, context);
      }
    }
  }

  /** Each result has it, so of many patterns it says the first. */
  private static String wanted(List<TextPattern> patterns, String words) {
    if (!words.equals(NO_WORDS)) {
      return words;
    }
    String first =
        patterns.stream()
            .limit(MOST_TOLD)
            .map(TextPattern::written)
            .collect(Collectors.joining(" or "));
    return words + " " + first + (patterns.size() > MOST_TOLD ? " or …" : "");
  }

  private static void report(Unit unit, Site site, String wanted, RuleContext context) {
    boolean elsewhere = !site.references(unit.name().or("")).isEmpty();
    context.report(
        unit.name().place(),
        new Message(
            "the name " + unit.called() + " does not match the pattern of the policy",
            "people who know the other sites look for " + wanted,
            "rename the unit to match" + (elsewhere ? ", wherever the file has it" : "")));
  }
}
