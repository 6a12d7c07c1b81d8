package org.headhouse.linter.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.stability.Internal;

/**
 * What is known of a rule without running it.
 *
 * @param id two words with a point between, {@code address.gap}: letters, digits and hyphens, lower
 *     case
 * @param requirement in one sentence; the page of the rule begins with it
 * @param level of its results where the policy says nothing
 * @param ruleSet the number of the first rule set that has the rule
 * @param parameters what the policy may set
 * @param foundation whether all other rules stay silent about what this one reports, so that
 *     neither the policy nor a suppression may hide it
 * @param yieldsTo the ids of the rules that may report the cause of what this one would report; it
 *     then stays silent, so that one mistake gives one result
 */
public record RuleDescriptor(
    String id,
    String requirement,
    Level level,
    int ruleSet,
    List<Parameter<?>> parameters,
    boolean foundation,
    List<String> yieldsTo) {

  private static final Pattern ID = Pattern.compile("[a-z][a-z0-9-]*\\.[a-z][a-z0-9-]*");

  /** Checks what is given. */
  @Internal
  public RuleDescriptor {
    Objects.requireNonNull(requirement, "a rule without a requirement");
    Objects.requireNonNull(level, "a rule without a level");
    if (!isId(id)) {
      throw new IllegalArgumentException(
          "\"" + id + "\" is no id of a rule: write two lower-case words with a point between");
    }
    if (ruleSet < 1) {
      throw new IllegalArgumentException(id + ": rule sets count from 1");
    }
    parameters = List.copyOf(parameters);
    if (parameters.stream().map(Parameter::name).distinct().count() < parameters.size()) {
      throw new IllegalArgumentException(id + ": two parameters have one name");
    }
    yieldsTo = List.copyOf(yieldsTo);
  }

  /** A rule of the first rule set. */
  public static RuleDescriptor of(
      String id, String requirement, Level level, Parameter<?>... parameters) {
    return new RuleDescriptor(id, requirement, level, 1, List.of(parameters), false, List.of());
  }

  /** A rule of the first rule set that other rules count on. */
  public static RuleDescriptor foundation(String id, String requirement) {
    return new RuleDescriptor(id, requirement, Level.ERROR, 1, List.of(), true, List.of());
  }

  /** The same rule, which also yields to others. */
  public RuleDescriptor yieldingTo(String... rules) {
    List<String> all = new ArrayList<>(yieldsTo);
    all.addAll(List.of(rules));
    return new RuleDescriptor(id, requirement, level, ruleSet, parameters, foundation, all);
  }

  /** Whether a text has the form of a rule's id. */
  public static boolean isId(String text) {
    return ID.matcher(text).matches();
  }

  /** The part of the id before the point: what the rule is about. */
  public String subject() {
    return id.substring(0, id.indexOf('.'));
  }
}
