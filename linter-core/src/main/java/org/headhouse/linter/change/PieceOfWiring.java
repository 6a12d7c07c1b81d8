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
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/** Turns a piece of wiring into a step: what is done at each of its items. */
final class PieceOfWiring {
  private final Site before;
  private final Site after;
  private final ChainStates chains;

  PieceOfWiring(Site before, Site after, ChainStates chains) {
    this.before = before;
    this.after = after;
    this.chains = chains;
  }

  /** The step, or nothing where only the file changes and no work is to be done. */
  Optional<Step> step(List<TrackedItem> piece) {
    List<WiringPlace> places = new ArrayList<>();
    for (TrackedItem item : piece) {
      List<FieldAction> actions = actions(item, piece);
      if (!actions.isEmpty()) {
        places.add(new WiringPlace(item.name(), actions));
      }
      TrackedItem next = exchangedTo(item);
      if (next != null && !piece.contains(next)) {
        // The cable is exchanged at its other end as well.
        places.add(new WiringPlace(next.name(), exchangedFrom(item)));
      }
    }
    return places.isEmpty()
        ? Optional.empty()
        : Optional.of(new Step.Wire(places, withoutReadings(piece)));
  }

  private List<FieldAction> actions(TrackedItem item, List<TrackedItem> piece) {
    List<FieldAction> actions = new ArrayList<>();
    takeOff(item, actions);
    land(item, actions);
    for (ValueChange change : ItemChanges.termination(item)) {
      if (!isNone(change.from()) || !isNone(change.to())) {
        actions.add(new FieldAction.Terminate(change));
      }
    }
    ItemChanges.bias(before, after, item)
        .forEach(change -> actions.add(new FieldAction.Fit(change)));
    if (item.stays()) {
      ItemChanges.terminals(item).forEach(change -> actions.add(new FieldAction.Fit(change)));
      exchange(item, piece, actions);
    } else {
      terminals(item.after(), actions);
    }
    ItemChanges.station(before, after, item)
        .forEach(change -> actions.add(new FieldAction.Fit(change)));
    if (item.after() == null) {
      actions.add(new FieldAction.TakeOut());
    } else if (item.liveAfter() && !item.liveBefore()) {
      actions.add(new FieldAction.SwitchOn(item.addressAfter()));
    }
    return actions;
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

  /** Cables that are exchanged between items that stay neighbours. */
  private void exchange(TrackedItem item, List<TrackedItem> piece, List<FieldAction> actions) {
    TrackedItem previous = chains.after().previous(item);
    if (previous != null && piece.contains(previous) && exchangedTo(previous) == item) {
      actions.addAll(exchangedFrom(previous));
    }
    TrackedItem next = exchangedTo(item);
    if (next != null) {
      ItemChanges.cable(item)
          .forEach(change -> actions.add(new FieldAction.Replace(true, next.name(), change)));
    }
  }

  private static List<FieldAction> exchangedFrom(TrackedItem previous) {
    List<FieldAction> actions = new ArrayList<>();
    ItemChanges.cable(previous)
        .forEach(change -> actions.add(new FieldAction.Replace(false, previous.name(), change)));
    return actions;
  }

  /** The next item, where it stays and the cable to it is exchanged; else null. */
  private @Nullable TrackedItem exchangedTo(TrackedItem item) {
    TrackedItem next = chains.after().next(item);
    return next == null || next != chains.before().next(item) || ItemChanges.cable(item).isEmpty()
        ? null
        : next;
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

  /** The followers at or after the first item of the piece, which may be cut off meanwhile. */
  private List<String> withoutReadings(List<TrackedItem> piece) {
    int first = chains.all().place(piece.get(0));
    return chains.all().items().stream()
        .filter(item -> chains.all().place(item) >= first)
        .filter(TrackedItem::liveThroughout)
        .filter(item -> !item.isHeadAfter())
        .map(TrackedItem::name)
        .toList();
  }
}
