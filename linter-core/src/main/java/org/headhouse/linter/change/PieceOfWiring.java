package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Connection;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.SurgeProtection;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/** Turns a piece of wiring into a step: what is done at each of its items. */
final class PieceOfWiring {
  private static final List<ValueChange> NOTHING = List.of();

  private final Site before;
  private final Site after;
  private final ChainStates chains;

  /**
   * @param back what undoes it, at each place
   * @param opened the items whose supply is isolated
   */
  record Opening(List<WiringPlace> places, List<WiringPlace> back, List<TrackedItem> opened) {
    Opening {
      places = List.copyOf(places);
      back = List.copyOf(back);
      opened = List.copyOf(opened);
    }
  }

  PieceOfWiring(Site before, Site after, ChainStates chains) {
    this.before = before;
    this.after = after;
    this.chains = chains;
  }

  /** What is done at each place, or nothing where only the file changes. */
  Optional<Opening> of(List<TrackedItem> piece, LineMoment now) {
    List<WiringPlace> places = new ArrayList<>();
    List<WiringPlace> back = new ArrayList<>();
    List<TrackedItem> opened = new ArrayList<>();
    for (TrackedItem item : piece) {
      List<FieldAction> actions = actions(item);
      if (!actions.isEmpty()) {
        places.add(new WiringPlace(item.name(), actions));
        back.add(0, new WiringPlace(item.name(), new ActionInverse(item, now).of(actions)));
        opened.add(item);
      }
    }
    roles(piece, places, back);
    return places.isEmpty() ? Optional.empty() : Optional.of(new Opening(places, back, opened));
  }

  /** The old head unit first: so there are never two head units, and only briefly none. */
  private void roles(List<TrackedItem> piece, List<WiringPlace> places, List<WiringPlace> back) {
    for (TrackedItem item : piece) {
      List<ValueChange> role = new ArrayList<>(UnitSettings.role(item));
      if (!role.isEmpty()) {
        if (item.isHeadAfter() && after.line().orNull() != null) {
          role.addAll(LineChanges.broadcastOfNew(after.line().orNull()));
        }
        boolean first = !item.isHeadAfter();
        places.add(
            first ? 0 : places.size(),
            new WiringPlace(item.name(), List.of(new FieldAction.Set(role, first))));
        back.add(
            first ? back.size() : 0,
            new WiringPlace(
                item.name(), List.of(new FieldAction.Set(StepInverse.of(role), !first))));
      }
    }
  }

  private List<FieldAction> actions(TrackedItem item) {
    List<FieldAction> actions = new ArrayList<>();
    takeOff(item, actions);
    land(item, actions);
    surgeProtectors(item, actions);
    boolean isPrepared = item.joins() && item.isExchanged();
    for (ValueChange change : isPrepared ? NOTHING : ItemChanges.termination(item)) {
      if (!isNone(change.from()) || !isNone(change.to())) {
        actions.add(new FieldAction.Terminate(change));
      }
    }
    ItemChanges.bias(before, after, item)
        .forEach(change -> actions.add(new FieldAction.Fit(change)));
    if (item.stays()) {
      ItemChanges.terminals(item).forEach(change -> actions.add(new FieldAction.Fit(change)));
      exchange(item, actions);
    } else {
      terminals(item.after(), actions);
    }
    ItemChanges.station(before, after, item)
        .forEach(change -> actions.add(new FieldAction.Fit(change)));
    if (item.isExchanged()) {
      carriedOver(item, actions);
      actions.add(
          new FieldAction.Exchange(
              ItemChanges.device(item), item.joins() ? item.addressAfter() : null));
    } else if (item.after() == null) {
      actions.add(new FieldAction.TakeOut());
    } else if (item.liveAfter() && !item.liveBefore()) {
      actions.add(new FieldAction.SwitchOn(item.addressAfter()));
    }
    return actions;
  }

  /** What hangs on the old device is fitted to the new one. */
  private void carriedOver(TrackedItem item, List<FieldAction> actions) {
    if (ItemChanges.bias(before, after, item).isEmpty()) {
      String bias = ItemChanges.bias(after, item.after());
      if (bias != null) {
        actions.add(new FieldAction.Fit(new ValueChange("bias", bias, bias)));
      }
    }
    if (ItemChanges.hasStation(before, item.before())
        && ItemChanges.hasStation(after, item.after())) {
      actions.add(new FieldAction.Fit(new ValueChange("weather-station", "wired", "wired")));
    }
  }

  static boolean isNone(@Nullable String termination) {
    return termination == null || termination.equals("none");
  }

  private void takeOff(TrackedItem item, List<FieldAction> actions) {
    TrackedItem previous = chains.before().previous(item);
    TrackedItem next = chains.before().next(item);
    if (previous != null && previous != chains.after().previous(item)) {
      actions.add(new FieldAction.TakeOff(false, previous.name()));
    }
    if (next != null && next != chains.after().next(item)) {
      actions.add(new FieldAction.TakeOff(true, next.name()));
    }
  }

  private void land(TrackedItem item, List<FieldAction> actions) {
    TrackedItem previous = chains.after().previous(item);
    TrackedItem next = chains.after().next(item);
    if (previous != null && previous != chains.before().previous(item)) {
      actions.add(new FieldAction.Land(false, previous.name(), length(previous)));
    }
    if (next != null && next != chains.before().next(item)) {
      actions.add(new FieldAction.Land(true, next.name(), length(item)));
    }
  }

  private static @Nullable String length(TrackedItem item) {
    return item.after() == null ? null : SettingComparison.text(item.after().cableToNext());
  }

  /** A run has one at each end: it goes with its cable, and comes with a new one. */
  private void surgeProtectors(TrackedItem item, List<FieldAction> actions) {
    surgeProtector(
        false, chains.before().previous(item), chains.after().previous(item), item, actions);
    surgeProtector(true, chains.before().next(item), chains.after().next(item), item, actions);
  }

  private static void surgeProtector(
      boolean onward,
      @Nullable TrackedItem was,
      @Nullable TrackedItem will,
      TrackedItem item,
      List<FieldAction> actions) {
    ChainItem from = was == null ? null : (onward ? item : was).before();
    ChainItem to = will == null ? null : (onward ? item : will).after();
    boolean isKept = was == will && isProtected(from) == isProtected(to);
    if (was != null && isProtected(from) && !isKept && !isUnclear(was, will, to)) {
      actions.add(new FieldAction.Protect(onward, was.name(), false));
    }
    if (will != null && isProtected(to) && !isKept && !isUnclear(was, will, from)) {
      actions.add(new FieldAction.Protect(onward, will.name(), true));
    }
  }

  private static boolean isProtected(@Nullable ChainItem from) {
    return from != null && from.surgeProtectionToNext().is(SurgeProtection.FITTED);
  }

  /** Of a run that stays, what is not understood is no change. */
  private static boolean isUnclear(
      @Nullable TrackedItem was, @Nullable TrackedItem will, @Nullable ChainItem from) {
    return was == will && from != null && from.surgeProtectionToNext().isFaulty();
  }

  /** Cables that are exchanged between items that stay neighbours. */
  private void exchange(TrackedItem item, List<FieldAction> actions) {
    TrackedItem previous = chains.after().previous(item);
    if (previous != null && previous == chains.before().previous(item)) {
      ItemChanges.run(previous)
          .forEach(change -> actions.add(new FieldAction.Replace(false, previous.name(), change)));
    }
    TrackedItem next = chains.after().next(item);
    if (next != null && next == chains.before().next(item)) {
      ItemChanges.run(item)
          .forEach(change -> actions.add(new FieldAction.Replace(true, next.name(), change)));
    }
  }

  private static void terminals(@Nullable ChainItem item, List<FieldAction> actions) {
    if (item != null && !(item instanceof Repeater)) {
      Connection connection = item.connection(Side.IN);
      fit("conductors", connection.conductors(), actions);
      fit("pair", connection.pair(), actions);
      fit("stub", connection.stub(), actions);
    }
    if (item instanceof Unit unit) {
      fit("comm-module", unit.commModule(), actions);
    }
  }

  private static void fit(String what, Setting<?> setting, List<FieldAction> actions) {
    String to = SettingComparison.text(setting);
    if (to != null) {
      actions.add(new FieldAction.Fit(new ValueChange(what, null, to)));
    }
  }
}
