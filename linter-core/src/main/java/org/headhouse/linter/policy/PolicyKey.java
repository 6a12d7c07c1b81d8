package org.headhouse.linter.policy;

/** The keys of a policy, and the form of its rule set. */
final class PolicyKey {
  static final String FORMAT = "format";
  static final String RULE_SET = "rule-set";
  static final String RULES = "rules";
  static final String BASELINE = "baseline";
  static final String LEVEL = "level";
  static final String PARAMETERS = "parameters";

  /** A number that a rule set can have, one day. */
  static final String RULE_SET_FORM = "[1-9][0-9]{0,3}";

  private PolicyKey() {}
}
