package org.headhouse.linter.rule;

import java.util.Objects;
import org.headhouse.linter.site.Site;

/**
 * The state of a site that it is compared with.
 *
 * @param site as it was
 * @param name what the user calls that state, such as a revision
 */
public record EarlierState(Site site, String name) {
  public EarlierState {
    Objects.requireNonNull(site, "an earlier state without a site");
    Objects.requireNonNull(name, "an earlier state without a name");
  }
}
