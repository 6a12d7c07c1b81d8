package org.headhouse.linter.rules;

import java.util.List;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.rule.EngineRule;
import org.headhouse.linter.rule.Rule;
import org.headhouse.linter.rule.RuleDescriptor;

/** The rules without code of their own. */
final class EngineRules {
  /** Checked while a file is read. */
  static final List<Rule> OF_READING =
      List.of(
          new Listed(RuleDescriptor.foundation("file.encoding", "A file is encoded in UTF-8.")),
          new Listed(
              RuleDescriptor.foundation(
                  "file.too-large",
                  "A file is within the limits: 1 MiB, 64 levels, 200 000 values with its aliases expanded, and 5000 faults.")),
          new Listed(
              RuleDescriptor.foundation(
                  "file.line-separator",
                  "A file has none of the characters U+0085, U+2028 and U+2029, at which only some readers end a line.")),
          new Listed(
              RuleDescriptor.foundation(
                  "file.merge-marks", "A file has no conflict markers of an unfinished merge.")),
          new Listed(
              RuleDescriptor.foundation(
                  "yaml.syntax",
                  "A file is YAML with plain keys, and uses only the types of the core schema.")),
          new Listed(
              RuleDescriptor.foundation(
                  "yaml.duplicate-key", "No key appears twice in a mapping.")),
          new Listed(
              RuleDescriptor.foundation(
                  "yaml.several-documents", "A file contains only one YAML document.")),
          new Listed(
              RuleDescriptor.of(
                  "yaml.ambiguous-scalar",
                  "A value means the same in YAML 1.1 and in YAML 1.2.",
                  Level.ERROR)),
          new Listed(
              RuleDescriptor.of(
                  "yaml.comment-cut",
                  "No comment cuts off a name or text without quotes.",
                  Level.WARNING)),
          new Listed(
              RuleDescriptor.of(
                  "schema.unknown-key", "Every key belongs to the format.", Level.ERROR)),
          new Listed(
              RuleDescriptor.foundation(
                  "schema.missing-key", "Every key that the format requires is present.")),
          new Listed(
              RuleDescriptor.foundation(
                  "schema.wrong-type",
                  "A value has the type that its key needs: text, number, true or false, list or mapping.")),
          new Listed(
              RuleDescriptor.foundation("schema.bad-value", "A value is one that its key allows.")),
          new Listed(
              RuleDescriptor.foundation(
                  "schema.out-of-range", "A number, a text or a list is within its limits.")),
          new Listed(
              RuleDescriptor.foundation(
                  "schema.bad-quantity",
                  "A quantity is a number with a unit that its key allows.")),
          new Listed(
              RuleDescriptor.of(
                  "draft.open-point",
                  "Once the site is commissioned, no point that a draft or a visit marked with look: is open.",
                  Level.ERROR)));

  /** Checked once all other rules have run. */
  static final List<Rule> OF_SUPPRESSIONS =
      List.of(
          new Listed(
              RuleDescriptor.of(
                      "suppression.unused", "Every suppression suppresses a result.", Level.WARNING)
                  .yieldingTo(
                      "reference.unknown", "suppression.expired", "suppression.unknown-rule")),
          new Listed(
              RuleDescriptor.of(
                  "suppression.expired", "No suppression has expired.", Level.WARNING)),
          new Listed(
              RuleDescriptor.of(
                  "suppression.unknown-rule",
                  "A suppression names a rule that exists and that may be suppressed.",
                  Level.WARNING)));

  private EngineRules() {}

  private record Listed(RuleDescriptor descriptor) implements EngineRule {}
}
