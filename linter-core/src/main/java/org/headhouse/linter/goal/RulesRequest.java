package org.headhouse.linter.goal;

import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.LinterMaker;
import org.headhouse.linter.run.Outcome;
import org.headhouse.linter.run.RulePage;
import org.jspecify.annotations.Nullable;

/**
 * The rules are listed, or the page of one is shown.
 *
 * @param rule its id, or null for the list
 */
public record RulesRequest(@Nullable String rule) implements GoalRequest {
  @Override
  public Outcome run(Console console, LinterMaker linters) throws UserError {
    SiteLinter linter = linters.make(SiteLinter.builder());
    if (rule == null) {
      linter.rules().forEach(one -> console.found(Level.NOTE, line(one)));
    } else {
      RulePage.of(rule, linter).lines().forEach(line -> console.found(Level.NOTE, line));
    }
    return Outcome.good();
  }

  private static String line(RuleDescriptor one) {
    return pad(one.id(), 28) + pad(one.level().word(), 9) + one.requirement();
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(Math.max(1, width - text.length()));
  }
}
