package org.headhouse.linter.rules;

import java.util.List;
import org.headhouse.linter.rule.Rule;

/** The list of all built-in rules, in the order of the reference. */
public final class BuiltInRules {
  private static final List<Rule> ALL = List.of();

  private BuiltInRules() {}

  /** All built-in rules. */
  public static List<Rule> all() {
    return ALL;
  }
}
