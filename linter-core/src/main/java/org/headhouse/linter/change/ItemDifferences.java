package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/** The differences at one item of the chain. */
final class ItemDifferences {
  private final Site before;
  private final Site after;
  private final ChainStates chains;

  ItemDifferences(Site before, Site after, ChainStates chains) {
    this.before = before;
    this.after = after;
    this.chains = chains;
  }

  List<Difference> of(TrackedItem item) {
    String name = item.name();
    List<Difference> found = new ArrayList<>();
    if (!item.stays()) {
      ItemKind kind = item.latest().kind();
      found.add(
          item.before() == null
              ? new Difference.Added(name, kind, name(chains.after().previous(item)))
              : new Difference.Removed(name, kind, name(chains.before().previous(item))));
    } else {
      named(item, found);
      neighbours(item, found);
      rewired(item, found);
      ItemChanges.termination(item)
          .forEach(change -> found.add(new Difference.Terminated(name, change)));
    }
    ItemChanges.bias(before, after, item)
        .forEach(change -> found.add(new Difference.Rebiased(name, change)));
    if (item.before() != null && item.after() != null) {
      device(item, found);
      ItemChanges.data(item.before(), item.after())
          .forEach(change -> found.add(new Difference.ItemSet(name, change)));
    }
    if (item.unitBefore() != null && item.unitAfter() != null) {
      set(name, item.unitBefore(), item.unitAfter(), found);
    }
    return found;
  }

  private static void named(TrackedItem item, List<Difference> found) {
    if (item.before() != null && item.after() != null) {
      SettingComparison.change("name", item.before().name(), item.after().name())
          .forEach(
              change ->
                  found.add(
                      new Difference.Renamed(
                          item.name(), Objects.requireNonNullElse(change.from(), ""))));
    }
    Integer from = item.before() == null ? null : item.before().address().orNull();
    Integer to = item.after() == null ? null : item.after().address().orNull();
    if (from != null && to != null && !from.equals(to)) {
      found.add(new Difference.Readdressed(item.name(), from, to));
    }
  }

  private void neighbours(TrackedItem item, List<Difference> found) {
    neighbour(
        item,
        "previous item",
        chains.before().previous(item),
        chains.after().previous(item),
        found);
    neighbour(item, "next item", chains.before().next(item), chains.after().next(item), found);
  }

  private static void neighbour(
      TrackedItem item,
      String what,
      @Nullable TrackedItem from,
      @Nullable TrackedItem to,
      List<Difference> found) {
    if (from != to) {
      found.add(new Difference.Rewired(item.name(), new ValueChange(what, name(from), name(to))));
    }
  }

  private static void rewired(TrackedItem item, List<Difference> found) {
    ItemChanges.cable(item)
        .forEach(change -> found.add(new Difference.Rewired(item.name(), change)));
    ItemChanges.terminals(item)
        .forEach(change -> found.add(new Difference.Rewired(item.name(), change)));
  }

  private static void device(TrackedItem item, List<Difference> found) {
    List<ValueChange> changes = ItemChanges.device(item);
    if (item.isExchanged()) {
      found.add(new Difference.Exchanged(item.name(), item.latest().kind(), changes));
    } else {
      changes.forEach(change -> found.add(new Difference.ItemSet(item.name(), change)));
    }
  }

  private static void set(String name, Unit from, Unit to, List<Difference> found) {
    SettingComparison.change("role", from.role(), to.role())
        .forEach(change -> found.add(new Difference.RoleChanged(name, change)));
    ItemChanges.sources(from, to)
        .forEach(change -> found.add(new Difference.Resourced(name, change)));
    ItemChanges.settings(from, to)
        .forEach(change -> found.add(new Difference.ItemSet(name, change)));
  }

  private static @Nullable String name(@Nullable TrackedItem item) {
    return item == null ? null : item.name();
  }
}
