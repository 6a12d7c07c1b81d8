package org.headhouse.linter.run;

import java.util.List;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.source.SpellingSuggester;

/** The page of a rule that a user names. */
public final class RulePage {
  private RulePage() {}

  /**
   * The page, in Markdown.
   *
   * @throws UserError where there is no such rule
   */
  public static String of(String id, SiteLinter linter) throws UserError {
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
