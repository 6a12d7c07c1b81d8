package org.headhouse.linter.figures;

import java.util.List;
import org.headhouse.linter.line.BroadcastLoad;
import org.headhouse.linter.line.PollLoad;
import org.headhouse.linter.line.SerialFormat;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.site.Broadcast;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/**
 * The traffic on the line, read from a site.
 *
 * @param understood whether all that the file says of it is understood
 * @param traffic null where the file says nothing of any, or where it is not understood
 */
record SiteTraffic(boolean understood, @Nullable Traffic traffic) {
  private static final SiteTraffic NOT_UNDERSTOOD = new SiteTraffic(false, null);

  static SiteTraffic of(Site site, TransactionTimes times) {
    LineSettings line = site.line().orNull();
    SerialFormat serial = line == null ? null : serial(line);
    SitePolls polls = new SitePolls(site, times);
    List<PollLoad> zones = polls.zones();
    List<PollLoad> equipment = polls.equipment();
    if (line == null
        || serial == null
        || line.broadcast().isFaulty()
        || zones == null
        || equipment == null) {
      return NOT_UNDERSTOOD;
    }
    Broadcast written = line.broadcast().orNull();
    BroadcastLoad broadcast = written == null ? null : broadcast(written, times);
    if (written != null && broadcast == null) {
      return NOT_UNDERSTOOD;
    }
    Traffic traffic = new Traffic(serial, broadcast, zones, equipment);
    boolean none = broadcast == null && traffic.polls().isEmpty();
    return new SiteTraffic(true, none ? null : traffic);
  }

  private static @Nullable SerialFormat serial(LineSettings line) {
    Integer baud = line.baud().orNull();
    Parity parity = line.parity().orNull();
    Integer stopBits = line.stopBits().orNull();
    return baud == null || parity == null || stopBits == null
        ? null
        : new SerialFormat(baud, parity != Parity.NONE, stopBits);
  }

  private static @Nullable BroadcastLoad broadcast(Broadcast written, TransactionTimes times) {
    Integer registers = written.registers().orNull();
    Double period = seconds(written.every());
    return registers == null || period == null
        ? null
        : new BroadcastLoad(registers, period, times.turnaroundSeconds());
  }

  /** A time above zero; null for any other. */
  static @Nullable Double seconds(Setting<Interval> setting) {
    Interval interval = setting.orNull();
    return interval == null || interval.seconds() <= 0 ? null : interval.seconds();
  }
}
