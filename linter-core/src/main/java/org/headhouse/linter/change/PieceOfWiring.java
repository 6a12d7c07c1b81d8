package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Connection;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.WeatherStation;
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

  /** The step, or nothing where all that changes is what is written. */
  Optional<Step> step(List<TrackedItem> piece) {
    List<WiringPlace> places = new ArrayList<>();
    for (TrackedItem item : piece) {
      List<FieldAction> acts = acts(item, piece);
      if (!acts.isEmpty()) {
        places.add(new WiringPlace(item.name(), acts));
      }
      TrackedItem next = exchangedTo(item);
      if (next != null && !piece.contains(next)) {
        // The other end of the cable is worked at as well.
        places.add(new WiringPlace(next.name(), exchangedFrom(item)));
      }
    }
    return places.isEmpty()
        ? Optional.empty()
        : Optional.of(new Step.Wire(places, withoutReadings(piece)));
  }

  private List<FieldAction> acts(TrackedItem item, List<TrackedItem> piece) {
    List<FieldAction> acts = new ArrayList<>();
    takeOff(item, acts);
    land(item, acts);
    for (ValueChange change : ItemChanges.termination(item)) {
      if (!isNone(change.from()) || !isNone(change.to())) {
        acts.add(new FieldAction.Terminate(change));
      }
    }
    ItemChanges.bias(before, after, item).forEach(change -> acts.add(new FieldAction.Fit(change)));
    if (item.stays()) {
      ItemChanges.terminals(item).forEach(change -> acts.add(new FieldAction.Fit(change)));
      exchange(item, piece, acts);
    } else {
      terminals(item.after(), acts);
    }
    station(item, acts);
    if (item.after() == null) {
      acts.add(new FieldAction.TakeOut());
    } else if (item.liveAfter() && !item.liveBefore()) {
      acts.add(new FieldAction.SwitchOn(item.addressAfter()));
    }
    return acts;
  }

  static boolean isNone(@Nullable String termination) {
    return termination == null || termination.equals("none");
  }

  private void takeOff(TrackedItem item, List<FieldAction> acts) {
    TrackedItem previous = chains.before().previous(item);
    TrackedItem next = chains.before().next(item);
    if (previous != null && previous != chains.after().previous(item)) {
      acts.add(new FieldAction.TakeOff(false, previous.name()));
    }
    if (next != null && next != chains.after().next(item)) {
      acts.add(new FieldAction.TakeOff(true, next.name()));
    }
  }

  private void land(TrackedItem item, List<FieldAction> acts) {
    TrackedItem previous = chains.after().previous(item);
    TrackedItem next = chains.after().next(item);
    if (previous != null && previous != chains.before().previous(item)) {
      acts.add(new FieldAction.Land(false, previous.name(), length(previous)));
    }
    if (next != null && next != chains.before().next(item)) {
      acts.add(new FieldAction.Land(true, next.name(), length(item)));
    }
  }

  private static @Nullable String length(TrackedItem item) {
    return item.after() == null ? null : SettingComparison.text(item.after().cableToNext());
  }

  /** The same neighbours, and another cable to one of them. */
  private void exchange(TrackedItem item, List<TrackedItem> piece, List<FieldAction> acts) {
    TrackedItem previous = chains.after().previous(item);
    if (previous != null && piece.contains(previous) && exchangedTo(previous) == item) {
      acts.addAll(exchangedFrom(previous));
    }
    TrackedItem next = exchangedTo(item);
    if (next != null) {
      ItemChanges.cable(item)
          .forEach(change -> acts.add(new FieldAction.Replace(true, next.name(), change)));
    }
  }

  private static List<FieldAction> exchangedFrom(TrackedItem previous) {
    List<FieldAction> acts = new ArrayList<>();
    ItemChanges.cable(previous)
        .forEach(change -> acts.add(new FieldAction.Replace(false, previous.name(), change)));
    return acts;
  }

  /** The neighbour that stays one, where the cable to it is another; else null. */
  private @Nullable TrackedItem exchangedTo(TrackedItem item) {
    TrackedItem next = chains.after().next(item);
    return next == null
            || next != chains.before().next(item)
            || ItemChanges.cable(item).isEmpty()
        ? null
        : next;
  }

  private static void terminals(@Nullable ChainItem item, List<FieldAction> acts) {
    if (item != null && !(item instanceof Repeater)) {
      Connection connection = item.connection(Side.IN);
      fit("conductors", connection.conductors(), acts);
      fit("pair", connection.pair(), acts);
      fit("stub", connection.stub(), acts);
    }
    if (item instanceof Unit unit) {
      fit("comm-module", unit.commModule(), acts);
    }
  }

  private static void fit(String what, Setting<?> setting, List<FieldAction> acts) {
    String to = SettingComparison.text(setting);
    if (to != null) {
      acts.add(new FieldAction.Fit(new ValueChange(what, null, to)));
    }
  }

  private void station(TrackedItem item, List<FieldAction> acts) {
    boolean was = item.before() != null && isAt(before, item.before().name());
    boolean will = item.after() != null && isAt(after, item.after().name());
    if (was != will) {
      acts.add(
          new FieldAction.Fit(new ValueChange("weather-station", was ? "wired" : null, will ? "wired" : null)));
    }
  }

  private static boolean isAt(Site site, Setting<String> name) {
    WeatherStation station = site.weatherStation().orNull();
    return station != null
        && station.at().isGiven()
        && Objects.equals(station.at().orNull(), name.orNull());
  }

  /**
   * Those behind the first place, or all where the head unit is worked at; the head has its own.
   */
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
