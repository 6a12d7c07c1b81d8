package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** What is set at a unit's own keys or display, the address apart. */
final class UnitSettings {
  private UnitSettings() {}

  /** At a unit that stays; its role apart, which is changed together with that of another. */
  static List<Change> changed(Member member) {
    List<Change> changes = new ArrayList<>();
    Unit before = member.unitBefore();
    Unit after = member.unitAfter();
    if (before != null && after != null) {
      Written.compare("name", before.name(), after.name(), changes);
      if (role(member).isEmpty()) {
        changes.addAll(ItemChanges.sources(before, after));
      }
      changes.addAll(ItemChanges.settings(before, after));
    }
    return changes;
  }

  /** The role of a unit that stays, and the sources that go with it. */
  static List<Change> role(Member member) {
    Unit before = member.unitBefore();
    Unit after = member.unitAfter();
    if (before == null || after == null || !Written.differ(before.role(), after.role())) {
      return List.of();
    }
    List<Change> changes = new ArrayList<>();
    Written.compare("role", before.role(), after.role(), changes);
    changes.addAll(ItemChanges.sources(before, after));
    return changes;
  }

  /**
   * At a unit that joins: all that it has to know, with the settings that the line has in the end.
   */
  static List<Change> ofNew(Member member, Unit unit, Site after) {
    List<Change> changes = new ArrayList<>();
    changes.add(new Change("name", null, member.name()));
    add("role", unit.role(), changes);
    LineSettings line = after.line().orNull();
    if (line != null) {
      add("baud", line.baud(), changes);
      add("parity", line.parity(), changes);
      add("stop-bits", line.stopBits(), changes);
    }
    changes.addAll(ItemChanges.sources(null, unit));
    add("on-stale-readings", unit.onStaleReadings(), changes);
    if (unit.network().orNull() != null) {
      add("network.ip", unit.network().orNull().ip(), changes);
      add("network.gateway", unit.network().orNull().gateway(), changes);
    }
    return changes;
  }

  private static void add(String what, Setting<?> setting, List<Change> changes) {
    String to = Written.text(setting);
    if (to != null) {
      changes.add(new Change(what, null, to));
    }
  }
}
