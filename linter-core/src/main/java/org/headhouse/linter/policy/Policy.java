package org.headhouse.linter.policy;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.RuleDescriptor;
import org.jspecify.annotations.Nullable;

/**
 * Levels and parameters of the rules, and the file of the results that are known.
 *
 * @param ruleSet the rule set whose rules are on; later rules stay off, so that a newer version of
 *     the tool does not break a repository by itself
 * @param levels what is written for single rules
 * @param parameters the values that are written for single rules, by rule and then by name
 * @param baseline the file with results that were there before, from the folder of the policy, or
 *     null
 */
public record Policy(
    int ruleSet,
    Map<String, Level> levels,
    Map<String, Map<String, Object>> parameters,
    @Nullable String baseline) {

  /** The newest rule set. */
  public static final int NEWEST_RULE_SET = 1;

  /** Where no policy is written. */
  public static final Policy DEFAULT = new Policy(NEWEST_RULE_SET, Map.of(), Map.of(), null);

  public Policy {
    levels = Map.copyOf(levels);
    parameters = Map.copyOf(parameters);
  }

  /** The level of a rule's most severe results; {@link Level#NONE} for a rule that is off. */
  public Level level(RuleDescriptor rule) {
    Level written = levels.get(rule.id());
    if (written != null) {
      return written;
    }
    return rule.ruleSet() <= ruleSet ? rule.level() : Level.NONE;
  }

  /**
   * The same policy where no result vanishes with its cause: a rule that is off has the level note
   * if one that is on yields to it, and so is silent where it is broken.
   */
  public Policy withCauses(List<RuleDescriptor> rules) {
    Map<String, RuleDescriptor> off = new LinkedHashMap<>();
    Deque<RuleDescriptor> on = new ArrayDeque<>();
    for (RuleDescriptor rule : rules) {
      if (level(rule) == Level.NONE) {
        off.put(rule.id(), rule);
      } else {
        on.add(rule);
      }
    }
    Map<String, Level> all = new HashMap<>(levels);
    while (!on.isEmpty() && !off.isEmpty()) {
      for (String cause : on.remove().yieldsTo()) {
        RuleDescriptor rule = off.remove(cause);
        if (rule != null) {
          all.put(cause, Level.NOTE);
          on.add(rule);
        }
      }
    }
    return new Policy(ruleSet, all, parameters, baseline);
  }

  /** The value of a rule's parameter. */
  @SuppressWarnings("unchecked") // the type of the parameter has made the value
  public <T> T value(RuleDescriptor rule, Parameter<T> parameter) {
    Object given = parameters.getOrDefault(rule.id(), Map.of()).get(parameter.name());
    return given == null ? parameter.defaultValue() : (T) given;
  }
}
