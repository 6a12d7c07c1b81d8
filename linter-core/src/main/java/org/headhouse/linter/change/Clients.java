package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.change.PollingChange.Client;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.PolledBy;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Supervision;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/** Who asks and writes to the devices of the line, and what changes in that with each step. */
final class Clients {
  private final Site before;
  private final Site after;
  private final ChainStates chains;

  Clients(Site before, Site after, ChainStates chains) {
    this.before = before;
    this.after = after;
    this.chains = chains;
  }

  /** What is changed around a step. */
  record Changes(List<PollingChange> first, List<PollingChange> last) {
    Changes {
      first = List.copyOf(first);
      last = List.copyOf(last);
    }
  }

  /** Whether software asks anything before the work. */
  boolean hasSoftware() {
    return before.supervision().isGiven()
        || chains.before().items().stream()
            .anyMatch(item -> client(before, item.before()) == Client.SOFTWARE);
  }

  /** Whether software asks anything after the work. */
  boolean keepsSoftware() {
    return after.supervision().isGiven()
        || chains.after().items().stream()
            .anyMatch(item -> client(after, item.after()) == Client.SOFTWARE);
  }

  /** Zones that name no unit: nobody knows at which address they are asked. */
  List<PollingChange> unknownZones() {
    Supervision supervision = before.supervision().orNull();
    List<PollingChange> found = new ArrayList<>();
    if (supervision != null) {
      for (Setting<String> zone : supervision.zones().or(List.of())) {
        String name = zone.orNull();
        if (name != null && before.unit(name) == null) {
          found.add(PollingChange.pause(Client.SOFTWARE, name, null));
        }
      }
    }
    return found;
  }

  Changes around(Phase phase) {
    List<PollingChange> first = new ArrayList<>();
    List<PollingChange> last = new ArrayList<>();
    for (TrackedItem item : concerned(phase)) {
      List<PollingChange> before = new ArrayList<>();
      List<PollingChange> after = new ArrayList<>();
      move(item, phase, before, after);
      rename(item, phase.step(), after);
      boolean isUnit = item.latest() instanceof Unit;
      before.forEach(one -> first.add(isUnit ? one : one.ofOtherDevice()));
      after.forEach(one -> last.add(isUnit ? one : one.ofOtherDevice()));
    }
    return new Changes(first, last);
  }

  private Set<TrackedItem> concerned(Phase phase) {
    Set<TrackedItem> concerned = new LinkedHashSet<>();
    for (TrackedItem item : chains.all().items()) {
      if (phase.places().contains(item)
          || phase.before().answering().containsKey(item)
              != phase.after().answering().containsKey(item)) {
        concerned.add(item);
      }
    }
    return concerned;
  }

  private void move(
      TrackedItem item, Phase phase, List<PollingChange> first, List<PollingChange> last) {
    Integer from = phase.before().answering().get(item);
    Integer to = phase.after().answering().get(item);
    Client was = client(before, item.before());
    Client will = client(after, item.after());
    if (from != null && to == null) {
      if (was != null && item.liveAfter() && will == was) {
        first.add(PollingChange.pause(was, earlier(item), from));
      } else if (was != null) {
        first.add(PollingChange.delete(was, earlier(item), from));
      }
    } else if (from == null && to != null) {
      if (was != null && was == will) {
        last.add(PollingChange.move(was, earlier(item), null, to));
      } else if (will != null) {
        last.add(PollingChange.add(will, item.name(), to));
      }
    } else if (from != null && to != null && !from.equals(to) && was != null) {
      if (phase.step() instanceof Step.Wire || phase.step() instanceof Step.Separate) {
        // Another may join at the earlier address in the same step, or stay there.
        first.add(PollingChange.pause(was, earlier(item), from));
        last.add(PollingChange.move(was, earlier(item), null, to));
      } else {
        last.add(PollingChange.move(was, earlier(item), from, to));
      }
    }
  }

  /**
   * A zone has the earlier name until the unit is set to the later one. A device without a display
   * of names has the later one from the start.
   */
  private static String earlier(TrackedItem item) {
    return item.unitBefore() == null ? item.name() : item.unitBefore().name().or(item.name());
  }

  private void rename(TrackedItem item, Step step, List<PollingChange> last) {
    Client was = client(before, item.before());
    if (was == null) {
      return;
    }
    List<ValueChange> settings =
        step instanceof Step.SetAddress set
            ? set.settings()
            : step instanceof Step.SetUnit unit
                ? unit.settings()
                : step instanceof Step.BringBack back ? back.settings() : List.of();
    for (ValueChange change : settings) {
      if (change.what().equals("name") && change.from() != null) {
        last.add(PollingChange.rename(was, change.from(), item.name()));
      }
    }
  }

  private static @Nullable Client client(Site site, @Nullable ChainItem item) {
    if (item instanceof Unit unit) {
      return isZone(site, unit) ? Client.SOFTWARE : null;
    }
    PolledBy by = PolledByHead.by(item);
    return by == null ? null : by == PolledBy.HEAD ? Client.HEAD : Client.SOFTWARE;
  }

  /** Where the zones are not understood, each unit may be one. */
  private static boolean isZone(Site site, Unit unit) {
    Supervision supervision = site.supervision().orNull();
    if (supervision == null) {
      return site.supervision().isFaulty();
    }
    List<Setting<String>> zones = supervision.zones().orNull();
    String name = unit.name().orNull();
    return zones == null
        || zones.stream().anyMatch(zone -> zone.isFaulty() || (name != null && zone.is(name)));
  }
}
