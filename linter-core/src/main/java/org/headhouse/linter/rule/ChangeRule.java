package org.headhouse.linter.rule;

import org.headhouse.linter.site.Site;

/** A requirement on how a site may change; without an earlier state it is not checked. */
public non-sealed interface ChangeRule extends Rule {

  /**
   * Reports what breaks the rule, at its place in the later state.
   *
   * @param before the earlier state of the site
   * @param after the later state, which the other rules look at too
   * @param context where findings go, and what else a rule may know of the later state
   */
  void check(Site before, Site after, RuleContext context);
}
