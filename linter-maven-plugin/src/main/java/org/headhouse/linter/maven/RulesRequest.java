package org.headhouse.linter.maven;

import java.util.List;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.source.SpellingSuggester;
import org.jspecify.annotations.Nullable;

/**
 * The rules are listed, or the page of one is shown.
 *
 * @param rule its id, or null for the list
 */
record RulesRequest(@Nullable String rule) implements GoalRequest {
  @Override
  public void run(Console console) throws UserError {
    SiteLinter linter = PluginLinterFactory.build(SiteLinter.builder());
    if (rule == null) {
      linter.rules().forEach(one -> console.report(Level.NOTE, line(one)));
    } else {
      page(rule, linter).lines().forEach(line -> console.report(Level.NOTE, line));
    }
  }

  private static String line(RuleDescriptor one) {
    return pad(one.id(), 28) + pad(one.level().word(), 9) + one.requirement();
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(Math.max(1, width - text.length()));
  }

  private static String page(String id, SiteLinter linter) throws UserError {
    List<String> ids = linter.rules().stream().map(RuleDescriptor::id).toList();
    if (!ids.contains(id)) {
      throw new UserError(
          "there is no rule \""
              + id
              + "\": use "
              + SpellingSuggester.suggest(id, ids).orElse("one of " + String.join(", ", ids)));
    }
    return linter.page(id).orElse("The rule " + id + " has no page.");
  }
}
