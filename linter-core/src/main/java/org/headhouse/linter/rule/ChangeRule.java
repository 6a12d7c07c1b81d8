package org.headhouse.linter.rule;

import org.headhouse.linter.result.Message;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

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

  /**
   * Whether it asks for proofs: then an earlier state that was planned for a change says too
   * little, and the state before it that was proved last is compared instead, where it is known.
   */
  @Internal
  default boolean asksForProofs() {
    return false;
  }

  /**
   * What to report of a site that is not there any more, neither under its id nor in its file nor
   * as one that is much the same; null for nothing.
   *
   * @param before the earlier state of the site
   */
  default @Nullable Message gone(Site before) {
    return null;
  }
}
