package org.headhouse.linter.repository;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.headhouse.linter.change.SiteChange;
import org.headhouse.linter.change.SiteComparison;
import org.headhouse.linter.materials.BillOfMaterials;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * Compares two states of a repository. A site is found again by its id, whatever its file is called
 * now, then by its file, then by what it has in common; where either state has one site only, these
 * two are compared.
 */
@Internal
public final class SiteChanges {
  private final SiteState before;
  private final SiteState after;
  private final ExcludedAddresses keptFree;
  private final Map<SiteState.Entry, SiteState.Entry> earlier = new HashMap<>();
  private final Map<SiteState.Entry, SiteState.Entry> later = new HashMap<>();

  /**
   * Finds the sites of one state in the other.
   *
   * @param keptFree addresses that no step of the field work may use, not even for a moment
   */
  public SiteChanges(SiteState before, SiteState after, ExcludedAddresses keptFree) {
    this.before = before;
    this.after = after;
    this.keptFree = keptFree;
    after.entries().forEach(this::matchUnmoved);
    after.entries().forEach(entry -> match(before.withId(entry.id()), entry));
    after.entries().forEach(entry -> match(before.at(entry.input().path()), entry));
    RenamedSites.of(
            without(before.entries(), later),
            without(after.entries(), earlier).stream().filter(this::hasNewId).toList(),
            before::likeness,
            after::likeness)
        .forEach((entry, one) -> match(one, entry));
    if (before.entries().size() == 1 && after.entries().size() == 1) {
      match(before.entries().get(0), after.entries().get(0));
    }
  }

  /** One that has the id of an earlier site is a copy of that. */
  private boolean hasNewId(SiteState.Entry entry) {
    return before.withId(entry.id()) == null;
  }

  private static List<SiteState.Entry> without(
      List<SiteState.Entry> entries, Map<SiteState.Entry, SiteState.Entry> found) {
    return entries.stream().filter(entry -> !found.containsKey(entry)).toList();
  }

  /** First of all, so that a copy which has the id of a site is not taken for it. */
  private void matchUnmoved(SiteState.Entry entry) {
    SiteState.Entry one = before.at(entry.input().path());
    if (one != null && Objects.equals(one.id(), entry.id())) {
      match(one, entry);
    }
  }

  private void match(SiteState.@Nullable Entry one, SiteState.Entry other) {
    if (one != null && !later.containsKey(one) && !earlier.containsKey(other)) {
      later.put(one, other);
      earlier.put(other, one);
    }
  }

  /** All changes: in the order of the later state, then what is gone. */
  public List<SiteChange> all() {
    List<SiteChange> changes = new ArrayList<>();
    for (SiteState.Entry entry : after.entries()) {
      SiteChange change = change(entry);
      if (change != null) {
        changes.add(change);
      }
    }
    for (SiteState.Entry entry : before.entries()) {
      if (!later.containsKey(entry)) {
        Site site = before.read(entry);
        changes.add(
            new SiteChange.Removed(
                id(entry), entry.input().path(), site == null ? 0 : units(site)));
      }
    }
    return List.copyOf(changes);
  }

  private @Nullable SiteChange change(SiteState.Entry entry) {
    SiteState.Entry was = earlier.get(entry);
    Site site = after.read(entry);
    if (site == null) {
      return unreadable(entry, "it cannot be read: a check says why");
    }
    if (was == null) {
      return new SiteChange.Added(
          SiteComparison.id(site), entry.input().path(), units(site), BillOfMaterials.of(site));
    }
    Site earlierSite = before.read(was);
    if (earlierSite == null) {
      return unreadable(entry, "its earlier state cannot be read");
    }
    SiteChange.Changed changed = SiteComparison.of(earlierSite, site, keptFree);
    return changed.differences().isEmpty() && Arrays.equals(before.bytes(was), after.bytes(entry))
        ? null
        : changed;
  }

  private static SiteChange unreadable(SiteState.Entry entry, String reason) {
    return new SiteChange.Unreadable(id(entry), entry.input().path(), reason);
  }

  private static String id(SiteState.Entry entry) {
    String id = entry.id();
    return id == null ? entry.input().path() : id;
  }

  private static int units(Site site) {
    return site.units().size();
  }
}
