package org.headhouse.linter.repository;

import org.headhouse.linter.check.EarlierSites;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * The sites of an earlier state, for a check of some sites of the later one.
 *
 * @param state the earlier state
 */
@Internal
public record NamedEarlierSites(SiteState state) implements EarlierSites {

  @Override
  public @Nullable Site of(Site later) {
    return state.earlier(later);
  }

  @Override
  public @Nullable Notification trouble(Site later) {
    return state.trouble(later);
  }

  @Override
  public @Nullable Site proved(Site earlier) {
    return state.proved(earlier);
  }

  @Override
  public boolean mayHaveBeenLive(Site site) {
    return state.mayHaveBeenLive(site);
  }

  @Override
  public String name() {
    return state.name();
  }
}
