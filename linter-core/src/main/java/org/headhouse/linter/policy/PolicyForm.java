package org.headhouse.linter.policy;

import java.util.Set;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.yaml.CoreType;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Scalar;

/**
 * Tells of an ordinary policy that its form is right, without the schema, which takes longer to
 * load than a site takes to check. What is not ordinary is left to the schema, right or wrong.
 */
public final class PolicyForm {
  private static final Set<String> KEYS =
      Set.of(PolicyKey.FORMAT, PolicyKey.RULE_SET, PolicyKey.RULES, PolicyKey.BASELINE);
  private static final Set<String> SETTINGS = Set.of(PolicyKey.LEVEL, PolicyKey.PARAMETERS);

  private PolicyForm() {}

  /** Whether the schema certainly finds nothing wrong. */
  public static boolean isRight(Cursor root) {
    return root.node() instanceof Mapping mapping
        && mapping.entries().stream()
            .allMatch(
                entry ->
                    KEYS.contains(entry.key().text())
                        && isRight(entry.key().text(), root.valueOf(entry)))
        && root.get(PolicyKey.FORMAT) != null
        && root.get(PolicyKey.RULE_SET) != null;
  }

  private static boolean isRight(String key, Cursor value) {
    return switch (key) {
      case PolicyKey.FORMAT -> isNumber(value, "1");
      case PolicyKey.RULE_SET -> isNumber(value, PolicyKey.RULE_SET_FORM);
      case PolicyKey.BASELINE -> value.node() instanceof Scalar scalar && isText(scalar);
      default -> isRules(value);
    };
  }

  private static boolean isNumber(Cursor value, String form) {
    return value.node() instanceof Scalar scalar
        && scalar.type() == CoreType.INTEGER
        && scalar.text().matches(form);
  }

  private static boolean isText(Scalar scalar) {
    return scalar.type() == CoreType.TEXT && !scalar.text().isBlank();
  }

  private static boolean isRules(Cursor rules) {
    return rules.node() instanceof Mapping mapping
        && mapping.entries().stream()
            .allMatch(
                entry -> entry.key().type() == CoreType.TEXT && isSetting(rules.valueOf(entry)));
  }

  private static boolean isSetting(Cursor setting) {
    Cursor level = setting.get(PolicyKey.LEVEL);
    Cursor parameters = setting.get(PolicyKey.PARAMETERS);
    return setting.node() instanceof Mapping mapping
        && mapping.entries().stream().allMatch(entry -> SETTINGS.contains(entry.key().text()))
        && (level == null
            || (level.node() instanceof Scalar scalar
                && isText(scalar)
                && Level.ofWord(scalar.text()).isPresent()))
        && (parameters == null || areParameters(parameters));
  }

  private static boolean areParameters(Cursor parameters) {
    return parameters.node() instanceof Mapping mapping
        && mapping.entries().stream()
            .allMatch(
                entry ->
                    entry.key().type() == CoreType.TEXT
                        && parameters.valueOf(entry).node() instanceof Scalar scalar
                        && (scalar.type() == CoreType.INTEGER || isText(scalar)));
  }
}
