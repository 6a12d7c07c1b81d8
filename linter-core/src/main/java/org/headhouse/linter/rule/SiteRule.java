package org.headhouse.linter.rule;

import org.headhouse.linter.site.Site;

/** A requirement on one site. */
public non-sealed interface SiteRule extends Rule {

  /**
   * Reports what breaks the rule.
   *
   * <p>A rule that lacks what it needs stays silent: other rules report what is missing or not
   * understood.
   *
   * @param site the site, as far as its file is understood
   * @param context where findings go, and what else a rule may know
   */
  void check(Site site, RuleContext context);
}
