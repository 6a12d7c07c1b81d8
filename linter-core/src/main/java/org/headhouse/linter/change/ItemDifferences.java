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
  private final Chains chains;

  ItemDifferences(Site before, Site after, Chains chains) {
    this.before = before;
    this.after = after;
    this.chains = chains;
  }

  List<Difference> of(Member member) {
    String name = member.name();
    List<Difference> found = new ArrayList<>();
    if (!member.stays()) {
      ItemKind kind = member.item().kind();
      found.add(
          member.before() == null
              ? new Difference.Added(name, kind, name(chains.after().previous(member)))
              : new Difference.Removed(name, kind, name(chains.before().previous(member))));
    } else {
      named(member, found);
      neighbours(member, found);
      rewired(member, found);
      ItemChanges.termination(member)
          .forEach(change -> found.add(new Difference.Terminated(name, change)));
    }
    ItemChanges.bias(before, after, member)
        .forEach(change -> found.add(new Difference.Rebiased(name, change)));
    if (member.unitBefore() != null && member.unitAfter() != null) {
      set(name, member.unitBefore(), member.unitAfter(), found);
    }
    return found;
  }

  private static void named(Member member, List<Difference> found) {
    if (member.before() != null && member.after() != null) {
      Written.change("name", member.before().name(), member.after().name())
          .forEach(
              change ->
                  found.add(
                      new Difference.Renamed(
                          member.name(), Objects.requireNonNullElse(change.from(), ""))));
    }
    Unit unit = member.unitBefore();
    Unit later = member.unitAfter();
    Integer from = unit == null ? null : unit.address().orNull();
    Integer to = later == null ? null : later.address().orNull();
    if (from != null && to != null && !from.equals(to)) {
      found.add(new Difference.Readdressed(member.name(), from, to));
    }
  }

  private void neighbours(Member member, List<Difference> found) {
    neighbour(
        member,
        "previous item",
        chains.before().previous(member),
        chains.after().previous(member),
        found);
    neighbour(
        member, "next item", chains.before().next(member), chains.after().next(member), found);
  }

  private static void neighbour(
      Member member,
      String what,
      @Nullable Member from,
      @Nullable Member to,
      List<Difference> found) {
    if (from != to) {
      found.add(new Difference.Rewired(member.name(), new Change(what, name(from), name(to))));
    }
  }

  private static void rewired(Member member, List<Difference> found) {
    ItemChanges.cable(member)
        .forEach(change -> found.add(new Difference.Rewired(member.name(), change)));
    ItemChanges.terminals(member)
        .forEach(change -> found.add(new Difference.Rewired(member.name(), change)));
  }

  private static void set(String name, Unit from, Unit to, List<Difference> found) {
    Written.change("role", from.role(), to.role())
        .forEach(change -> found.add(new Difference.RoleChanged(name, change)));
    ItemChanges.sources(from, to)
        .forEach(change -> found.add(new Difference.Resourced(name, change)));
    Written.change("device-type", from.deviceType(), to.deviceType())
        .forEach(change -> found.add(new Difference.ItemSet(name, change)));
    ItemChanges.settings(from, to)
        .forEach(change -> found.add(new Difference.ItemSet(name, change)));
  }

  private static @Nullable String name(@Nullable Member member) {
    return member == null ? null : member.name();
  }
}
