package org.headhouse.linter.rule;

/**
 * One requirement that a definition must meet.
 *
 * <p>A rule is stateless and safe for use by several threads. What checks it depends on the kind:
 * {@link EngineRule} is checked by the linter itself, {@link SiteRule} looks at one site, {@link
 * RepositoryRule} at all of them, {@link ChangeRule} at two states of one site. One rule may look
 * at one site and at all of them.
 */
public sealed interface Rule permits EngineRule, SiteRule, RepositoryRule, ChangeRule {

  /** What the rule requires; always the same object. */
  RuleDescriptor descriptor();
}
