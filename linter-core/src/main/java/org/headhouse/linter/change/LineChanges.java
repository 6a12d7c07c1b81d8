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

  /** What every unit must be set to alike. */
  static List<Change> serial(Site before, Site after) {
    LineSettings line = before.line().orNull();
    LineSettings other = after.line().orNull();
    return line == null || other == null ? List.of() : serial(line, other);
  }

  static List<Change> serial(LineSettings before, LineSettings after) {
    List<Change> changes = new ArrayList<>();
    Written.compare("baud", before.baud(), after.baud(), changes);
    Written.compare("parity", before.parity(), after.parity(), changes);
    Written.compare("stop-bits", before.stopBits(), after.stopBits(), changes);
    return changes;
  }

  static List<Change> broadcast(LineSettings before, LineSettings after) {
    Broadcast broadcast = before.broadcast().orNull();
    Broadcast other = after.broadcast().orNull();
    List<Change> changes = new ArrayList<>();
    if (broadcast != null && other != null) {
      Written.compare(
          "traffic.broadcast.registers", broadcast.registers(), other.registers(), changes);
      Written.compare("traffic.broadcast.every", broadcast.every(), other.every(), changes);
    } else if (broadcast != null || other != null) {
      changes.add(new Change("traffic.broadcast", written(broadcast), written(other)));
    }
    return changes;
  }

  private static @Nullable String written(@Nullable Broadcast broadcast) {
    return broadcast == null
        ? null
        : Written.text(broadcast.registers())
            + " registers every "
            + Written.text(broadcast.every());
  }
}
