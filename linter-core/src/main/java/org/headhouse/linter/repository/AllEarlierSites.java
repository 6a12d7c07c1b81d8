package org.headhouse.linter.repository;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.check.EarlierSites;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.InputFile;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * All sites of an earlier state, for a check of all sites of the later one.
 *
 * @param state the earlier state
 */
@Internal
public record AllEarlierSites(SiteState state) implements EarlierSites {

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

  @Override
  public Unfound unfound(LaterSites later) {
    Set<String> ids = new HashSet<>(later.ids().values());
    List<SiteState.Entry> unfound = new ArrayList<>();
    for (SiteState.Entry entry : state.entries()) {
      boolean hasId = entry.id() != null && ids.contains(entry.id());
      if (!hasId && !hasFile(entry, later)) {
        unfound.add(entry);
      }
    }
    Map<InputFile, SiteState.Entry> again =
        RenamedSites.of(unfound, later.strangers(), state::likeness, state::likeness);
    Map<String, Site> renamed = new HashMap<>();
    again.forEach((input, entry) -> put(renamed, input.path(), state.read(entry)));
    unfound.removeAll(again.values());
    List<Site> gone = new ArrayList<>();
    List<Notification> troubles = new ArrayList<>();
    for (SiteState.Entry entry : unfound) {
      Site site = state.read(entry);
      if (site != null) {
        gone.add(site);
      }
      Notification trouble = site == null ? state.trouble(entry) : null;
      if (trouble != null) {
        troubles.add(trouble);
      }
    }
    return new Unfound(renamed, gone, troubles);
  }

  /** Whether its file is there, and holds no other site of the earlier state. */
  private boolean hasFile(SiteState.Entry entry, LaterSites later) {
    String id = later.ids().get(entry.input().path());
    return id != null && state.withId(id) == null;
  }

  private static void put(Map<String, Site> sites, String path, @Nullable Site site) {
    if (site != null) {
      sites.put(path, site);
    }
  }
}
