package org.headhouse.linter.policy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.source.SpellingSuggester;
import org.headhouse.linter.yaml.CoreType;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Scalar;
import org.jspecify.annotations.Nullable;

/** Reads a policy whose form the schema has looked at; what the schema refused is passed over. */
public final class PolicyReader {
  private final Map<String, RuleDescriptor> known = new TreeMap<>();
  private final SpellingSuggester ids = new SpellingSuggester(known.keySet());
  private final List<Finding> findings = new ArrayList<>();
  private final Map<String, Level> levels = new HashMap<>();
  private final Map<String, Map<String, Object>> parameters = new HashMap<>();

  /** A reader for one file. */
  public PolicyReader(List<RuleDescriptor> rules) {
    rules.forEach(rule -> known.put(rule.id(), rule));
  }

  /** What was found, apart from the faults that the schema reports. */
  public List<Finding> findings() {
    return List.copyOf(findings);
  }

  /**
   * Reads the root node of the file.
   *
   * @throws IllegalArgumentException where a rule fails to read a parameter of its own
   */
  public Policy read(Cursor root) {
    Cursor rules = root.get(PolicyKey.RULES);
    if (rules != null && rules.node() instanceof Mapping mapping) {
      for (Mapping.Entry entry : mapping.entries()) {
        rule(entry, rules);
      }
    }
    return new Policy(
        ruleSet(root.get(PolicyKey.RULE_SET)),
        levels,
        parameters,
        baseline(root.get(PolicyKey.BASELINE)));
  }

  private static @Nullable String baseline(@Nullable Cursor cursor) {
    return cursor != null
            && cursor.node() instanceof Scalar scalar
            && scalar.type() == CoreType.TEXT
            && !scalar.text().isBlank()
        ? scalar.text()
        : null;
  }

  private int ruleSet(@Nullable Cursor cursor) {
    String text = text(cursor);
    if (cursor == null || text == null || !text.matches(PolicyKey.RULE_SET_FORM)) {
      return Policy.NEWEST_RULE_SET;
    }
    int number = Integer.parseInt(text);
    if (number > Policy.NEWEST_RULE_SET) {
      findings.add(unknownRuleSet(number, cursor));
    }
    return number;
  }

  private static Finding unknownRuleSet(int number, Cursor cursor) {
    return Finding.of(
        "schema.out-of-range",
        cursor.place(),
        new Message(
            "there is no rule set " + number,
            "the rules that it adds to those of rule set "
                + Policy.NEWEST_RULE_SET
                + " are not checked",
            "take the version of the tool that has it, or write " + Policy.NEWEST_RULE_SET));
  }

  private void rule(Mapping.Entry entry, Cursor rules) {
    String id = entry.key().text();
    RuleDescriptor rule = known.get(id);
    if (rule == null) {
      unknown("rule", id, ids, rules, entry);
      return;
    }
    Cursor value = rules.valueOf(entry);
    level(rule, value.get(PolicyKey.LEVEL));
    Cursor written = value.get(PolicyKey.PARAMETERS);
    if (written != null && written.node() instanceof Mapping mapping) {
      for (Mapping.Entry parameter : mapping.entries()) {
        parameter(rule, parameter, written);
      }
    }
  }

  private void level(RuleDescriptor rule, @Nullable Cursor written) {
    Level level = Optional.ofNullable(text(written)).flatMap(Level::ofWord).orElse(null);
    if (written == null || level == null) {
      return;
    }
    if (rule.foundation() && level != rule.level()) {
      findings.add(fixedLevel(rule, level, written));
    } else {
      levels.put(rule.id(), level);
    }
  }

  private static Finding fixedLevel(RuleDescriptor rule, Level level, Cursor written) {
    return Finding.of(
        "schema.bad-value",
        written.place(),
        new Message(
            "the level of " + rule.id() + " cannot be " + level.word(),
            "other rules stay silent about what it reports, so a file would pass unread",
            "write " + rule.level().word() + ", or delete the level"));
  }

  private void parameter(RuleDescriptor rule, Mapping.Entry entry, Cursor parent) {
    String name = entry.key().text();
    Optional<Parameter<?>> parameter =
        rule.parameters().stream().filter(one -> one.name().equals(name)).findFirst();
    if (parameter.isEmpty()) {
      List<String> names = rule.parameters().stream().map(Parameter::name).sorted().toList();
      unknown("parameter of " + rule.id(), name, new SpellingSuggester(names), parent, entry);
      return;
    }
    Cursor value = parent.valueOf(entry);
    try {
      new ParameterReader(parameter.get(), findings)
          .read(value)
          .ifPresent(
              read -> parameters.computeIfAbsent(rule.id(), id -> new HashMap<>()).put(name, read));
    } catch (RuntimeException | StackOverflowError | LinkageError failure) {
      // A type may come from anywhere, like the rule that has it.
      throw new IllegalArgumentException(
          "the rule " + rule.id() + " cannot read its parameter \"" + name + "\": " + failure,
          failure);
    }
  }

  private void unknown(
      String what, String name, SpellingSuggester known, Cursor parent, Mapping.Entry entry) {
    String remedy =
        known
            .suggest(name)
            .map(near -> "write \"" + near + "\"")
            .orElse("delete it; the goal \"rules\" lists what there is");
    findings.add(
        Finding.of(
            "schema.unknown-key",
            parent.keyOf(entry),
            new Message(
                "there is no " + what + " \"" + name + "\"",
                "its settings have no effect",
                remedy)));
  }

  private static @Nullable String text(@Nullable Cursor cursor) {
    return cursor != null && cursor.node() instanceof Scalar scalar ? scalar.text() : null;
  }
}
