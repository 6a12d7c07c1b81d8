package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.site.Broadcast;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/** What changes for the whole line. */
final class LineChanges {
  private LineChanges() {}

  /** What must be set alike at every unit. */
  static List<ValueChange> serial(Site before, Site after) {
    LineSettings line = before.line().orNull();
    LineSettings other = after.line().orNull();
    return line == null || other == null ? List.of() : serial(line, other);
  }

  static List<ValueChange> serial(LineSettings before, LineSettings after) {
    List<ValueChange> changes = new ArrayList<>();
    SettingComparison.compare("baud", before.baud(), after.baud(), changes);
    SettingComparison.compare("parity", before.parity(), after.parity(), changes);
    SettingComparison.compare("stop-bits", before.stopBits(), after.stopBits(), changes);
    return changes;
  }

  static List<ValueChange> broadcast(LineSettings before, LineSettings after) {
    Broadcast broadcast = before.broadcast().orNull();
    Broadcast other = after.broadcast().orNull();
    List<ValueChange> changes = new ArrayList<>();
    if (broadcast != null && other != null) {
      SettingComparison.compare(
          "traffic.broadcast.registers", broadcast.registers(), other.registers(), changes);
      SettingComparison.compare(
          "traffic.broadcast.every", broadcast.every(), other.every(), changes);
    } else if (broadcast != null || other != null) {
      changes.add(new ValueChange("traffic.broadcast", written(broadcast), written(other)));
    }
    return changes;
  }

  private static @Nullable String written(@Nullable Broadcast broadcast) {
    return broadcast == null
        ? null
        : SettingComparison.text(broadcast.registers())
            + " registers every "
            + SettingComparison.text(broadcast.every());
  }
}
