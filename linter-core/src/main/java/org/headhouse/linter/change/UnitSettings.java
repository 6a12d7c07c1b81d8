package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** What is set at a unit itself, but for the address. */
final class UnitSettings {
  private static final Set<String> OF_FOLLOWERS = Set.of("on-stale-readings", "stale-after");

  /** A fact that somebody takes the time of; there is nothing to set. */
  private static final String MEASURED = "close-time";

  private UnitSettings() {}

  /** At a unit that stays, but for its role, which changes together with that of another unit. */
  static List<ValueChange> changed(TrackedItem item) {
    List<ValueChange> changes = new ArrayList<>();
    Unit before = item.unitBefore();
    Unit after = item.unitAfter();
    if (before != null && after != null && !item.isExchanged()) {
      SettingComparison.compare("name", before.name(), after.name(), changes);
      boolean keepsRole = role(item).isEmpty();
      if (keepsRole) {
        changes.addAll(ItemChanges.sources(before, after));
      }
      ItemChanges.settings(before, after).stream()
          .filter(change -> !MEASURED.equals(change.what()))
          .filter(change -> keepsRole || !OF_FOLLOWERS.contains(change.what()))
          .forEach(changes::add);
    }
    return changes;
  }

  /**
   * The role of a unit that stays, and what goes with it: the sources, and what it does when the
   * readings stop, which it needs exactly as long as it follows.
   */
  static List<ValueChange> role(TrackedItem item) {
    Unit before = item.unitBefore();
    Unit after = item.unitAfter();
    if (before == null
        || after == null
        || item.isExchanged()
        || !SettingComparison.differ(before.role(), after.role())) {
      return List.of();
    }
    List<ValueChange> changes = new ArrayList<>();
    SettingComparison.compare("role", before.role(), after.role(), changes);
    changes.addAll(ItemChanges.sources(before, after));
    ItemChanges.settings(before, after).stream()
        .filter(change -> OF_FOLLOWERS.contains(change.what()))
        .forEach(changes::add);
    return changes;
  }

  /**
   * At a device that joins: all that it has to know, with the settings that the line has in the
   * end. What is fitted to its terminals belongs to the wiring, but for the terminator of one that
   * takes the place of another.
   */
  static List<ValueChange> ofNew(TrackedItem item, Site after) {
    List<ValueChange> changes = new ArrayList<>();
    Unit unit = item.unitAfter();
    if (unit != null) {
      changes.add(new ValueChange("name", null, item.name()));
      add("role", unit.role(), changes);
    }
    LineSettings line = after.line().orNull();
    if (line != null) {
      add("baud", line.baud(), changes);
      add("parity", line.parity(), changes);
      add("stop-bits", line.stopBits(), changes);
      if (unit != null && unit.isHead()) {
        changes.addAll(LineChanges.broadcastOfNew(line));
      }
    }
    if (unit != null) {
      ofNew(unit, changes);
    }
    if (item.isExchanged() && item.after() != null) {
      add("termination", item.after().connection(Side.IN).termination(), changes);
    }
    return changes;
  }

  private static void ofNew(Unit unit, List<ValueChange> changes) {
    changes.addAll(ItemChanges.sources(null, unit));
    add("vents", unit.vents(), changes);
    add("on-stale-readings", unit.onStaleReadings(), changes);
    add("stale-after", unit.staleAfter(), changes);
    if (unit.network().orNull() != null) {
      add("network.ip", unit.network().orNull().ip(), changes);
      add("network.gateway", unit.network().orNull().gateway(), changes);
    }
    add("firmware", unit.firmware(), changes);
  }

  private static void add(String what, Setting<?> setting, List<ValueChange> changes) {
    String to = SettingComparison.text(setting);
    if (to != null) {
      changes.add(new ValueChange(what, null, to));
    }
  }
}
