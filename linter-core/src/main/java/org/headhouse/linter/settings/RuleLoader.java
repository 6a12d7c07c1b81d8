package org.headhouse.linter.settings;

import java.util.ArrayList;
import java.util.List;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;
import org.headhouse.linter.rule.Rule;

/** Loads the rules of other jars, and says in plain words why one cannot be used. */
final class RuleLoader {
  private RuleLoader() {}

  /**
   * All rules that a class loader finds.
   *
   * @throws IllegalArgumentException where one of them cannot be used
   */
  static List<Rule> from(ClassLoader loader) {
    List<Rule> rules = new ArrayList<>();
    try {
      for (Rule rule : ServiceLoader.load(Rule.class, loader)) {
        rules.add(rule);
      }
    } catch (ServiceConfigurationError | LinkageError failure) {
      throw new IllegalArgumentException(
          "a rule of another jar cannot be used: " + reason(failure), failure);
    }
    return rules;
  }

  /** The class that is meant, and what its author would look for. */
  private static String reason(Error failure) {
    String said =
        failure instanceof ServiceConfigurationError
            ? String.valueOf(failure.getMessage()).replace(Rule.class.getName() + ": ", "")
            : failure.toString();
    Throwable root = failure;
    while (root.getCause() != null) {
      root = root.getCause();
    }
    return root == failure ? said : said + ": " + root;
  }
}
