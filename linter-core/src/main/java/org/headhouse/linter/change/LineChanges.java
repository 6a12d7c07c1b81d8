package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.site.Broadcast;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.WeatherStation;
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

  /** What a new head unit has to be set to, so that it sends the readings. */
  static List<ValueChange> broadcastOfNew(LineSettings line) {
    Broadcast broadcast = line.broadcast().orNull();
    return broadcast == null
        ? List.of()
        : List.of(new ValueChange("traffic.broadcast", null, written(broadcast)));
  }

  /** Whether the readings come less often, or with less in them, once the broadcast is changed. */
  static boolean sendsLess(Site before, Site after) {
    Broadcast broadcast = broadcast(before);
    Broadcast other = broadcast(after);
    if (broadcast == null || other == null) {
      return broadcast != null;
    }
    Interval every = broadcast.every().orNull();
    Interval later = other.every().orNull();
    return (every != null && later != null && later.seconds() > every.seconds())
        || other.registers().or(0) < broadcast.registers().or(0);
  }

  /** What the head unit makes of the wind. */
  static List<ValueChange> averaging(Site before, Site after) {
    return SettingComparison.change(
        "weather-station.averaging",
        SettingComparison.in(before.weatherStation().orNull(), WeatherStation::averaging),
        SettingComparison.in(after.weatherStation().orNull(), WeatherStation::averaging));
  }

  private static @Nullable Broadcast broadcast(Site site) {
    LineSettings line = site.line().orNull();
    return line == null ? null : line.broadcast().orNull();
  }

  static List<ValueChange> broadcast(Site before, Site after) {
    LineSettings line = before.line().orNull();
    LineSettings other = after.line().orNull();
    return line == null || other == null ? List.of() : broadcast(line, other);
  }

  private static @Nullable String written(@Nullable Broadcast broadcast) {
    return broadcast == null
        ? null
        : SettingComparison.text(broadcast.registers())
            + " registers every "
            + SettingComparison.text(broadcast.every());
  }
}
