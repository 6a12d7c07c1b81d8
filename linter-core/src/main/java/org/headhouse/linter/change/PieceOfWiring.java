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
  private final Chains chains;

  PieceOfWiring(Site before, Site after, Chains chains) {
    this.before = before;
    this.after = after;
    this.chains = chains;
  }

  /** The step, or nothing where all that changes is what is written. */
  Optional<Step> step(List<Member> piece) {
    List<WiringPlace> places = new ArrayList<>();
    for (Member member : piece) {
      List<Act> acts = acts(member, piece);
      if (!acts.isEmpty()) {
        places.add(new WiringPlace(member.name(), acts));
      }
      Member next = exchangedTo(member);
      if (next != null && !piece.contains(next)) {
        // The other end of the cable is worked at as well.
        places.add(new WiringPlace(next.name(), exchangedFrom(member)));
      }
    }
    return places.isEmpty()
        ? Optional.empty()
        : Optional.of(new Step.Wire(places, withoutReadings(piece)));
  }

  private List<Act> acts(Member member, List<Member> piece) {
    List<Act> acts = new ArrayList<>();
    takeOff(member, acts);
    land(member, acts);
    for (Change change : ItemChanges.termination(member)) {
      if (!isNone(change.from()) || !isNone(change.to())) {
        acts.add(new Act.Terminate(change));
      }
    }
    ItemChanges.bias(before, after, member).forEach(change -> acts.add(new Act.Fit(change)));
    if (member.stays()) {
      ItemChanges.terminals(member).forEach(change -> acts.add(new Act.Fit(change)));
      exchange(member, piece, acts);
    } else {
      terminals(member.after(), acts);
    }
    station(member, acts);
    if (member.after() == null) {
      acts.add(new Act.TakeOut());
    } else if (member.liveAfter() && !member.liveBefore()) {
      acts.add(new Act.SwitchOn(member.addressAfter()));
    }
    return acts;
  }

  static boolean isNone(@Nullable String termination) {
    return termination == null || termination.equals("none");
  }

  private void takeOff(Member member, List<Act> acts) {
    Member previous = chains.before().previous(member);
    Member next = chains.before().next(member);
    if (previous != null && previous != chains.after().previous(member)) {
      acts.add(new Act.TakeOff(false, previous.name()));
    }
    if (next != null && next != chains.after().next(member)) {
      acts.add(new Act.TakeOff(true, next.name()));
    }
  }

  private void land(Member member, List<Act> acts) {
    Member previous = chains.after().previous(member);
    Member next = chains.after().next(member);
    if (previous != null && previous != chains.before().previous(member)) {
      acts.add(new Act.Land(false, previous.name(), length(previous)));
    }
    if (next != null && next != chains.before().next(member)) {
      acts.add(new Act.Land(true, next.name(), length(member)));
    }
  }

  private static @Nullable String length(Member member) {
    return member.after() == null ? null : Written.text(member.after().cableToNext());
  }

  /** The same neighbours, and another cable to one of them. */
  private void exchange(Member member, List<Member> piece, List<Act> acts) {
    Member previous = chains.after().previous(member);
    if (previous != null && piece.contains(previous) && exchangedTo(previous) == member) {
      acts.addAll(exchangedFrom(previous));
    }
    Member next = exchangedTo(member);
    if (next != null) {
      ItemChanges.cable(member)
          .forEach(change -> acts.add(new Act.Replace(true, next.name(), change)));
    }
  }

  private static List<Act> exchangedFrom(Member previous) {
    List<Act> acts = new ArrayList<>();
    ItemChanges.cable(previous)
        .forEach(change -> acts.add(new Act.Replace(false, previous.name(), change)));
    return acts;
  }

  /** The neighbour that stays one, where the cable to it is another; else null. */
  private @Nullable Member exchangedTo(Member member) {
    Member next = chains.after().next(member);
    return next == null
            || next != chains.before().next(member)
            || ItemChanges.cable(member).isEmpty()
        ? null
        : next;
  }

  private static void terminals(@Nullable ChainItem item, List<Act> acts) {
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

  private static void fit(String what, Setting<?> setting, List<Act> acts) {
    String to = Written.text(setting);
    if (to != null) {
      acts.add(new Act.Fit(new Change(what, null, to)));
    }
  }

  private void station(Member member, List<Act> acts) {
    boolean was = member.before() != null && isAt(before, member.before().name());
    boolean will = member.after() != null && isAt(after, member.after().name());
    if (was != will) {
      acts.add(
          new Act.Fit(new Change("weather-station", was ? "wired" : null, will ? "wired" : null)));
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
  private List<String> withoutReadings(List<Member> piece) {
    int first = chains.all().place(piece.get(0));
    return chains.all().members().stream()
        .filter(member -> chains.all().place(member) >= first)
        .filter(Member::liveThroughout)
        .filter(member -> !member.isHeadAfter())
        .map(Member::name)
        .toList();
  }
}
