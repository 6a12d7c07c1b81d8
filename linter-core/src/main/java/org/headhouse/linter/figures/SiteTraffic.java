package org.headhouse.linter.figures;

import java.util.List;
import org.headhouse.linter.line.BroadcastLoad;
import org.headhouse.linter.line.PollLoad;
import org.headhouse.linter.line.SerialFormat;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.site.Broadcast;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Link;
import org.headhouse.linter.site.Parity;
import org.headhouse.linter.site.Polling;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Supervision;
import org.jspecify.annotations.Nullable;

/** Reads the traffic on the line from a site. */
final class SiteTraffic {
  /** The default that the schema documents. */
  private static final Interval TIMEOUT = new Interval(1, "1 s");

  private static final int RETRIES = 1;

  private SiteTraffic() {}

  static @Nullable Traffic of(Site site, TransactionTimes times) {
    LineSettings line = site.line().orNull();
    SerialFormat serial = line == null ? null : serial(line);
    if (line == null || serial == null || line.broadcast().isFaulty()) {
      return null;
    }
    Broadcast written = line.broadcast().orNull();
    BroadcastLoad broadcast = written == null ? null : broadcast(written, times);
    Supervision supervision = site.supervision().orNull();
    Polling polling = pollingOverLine(supervision);
    PollLoad polls =
        supervision == null || polling == null ? null : polls(supervision, polling, times);
    boolean understood =
        (written == null) == (broadcast == null) && (polling == null) == (polls == null);
    return understood && (broadcast != null || polls != null)
        ? new Traffic(serial, broadcast, polls)
        : null;
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

  /** Polls over Ethernet do not load the line. */
  private static @Nullable Polling pollingOverLine(@Nullable Supervision supervision) {
    return supervision != null && supervision.link().optional().filter(Link::loadsLine).isPresent()
        ? supervision.polling().orNull()
        : null;
  }

  private static @Nullable PollLoad polls(
      Supervision supervision, Polling polling, TransactionTimes times) {
    Integer registers = polling.registers().orNull();
    Double period = seconds(polling.every());
    Double timeout = seconds(orIfMissing(polling.timeout(), TIMEOUT));
    Integer retries = orIfMissing(polling.retries(), RETRIES).orNull();
    int zones = supervision.zones().optional().map(List::size).orElse(0);
    return registers == null || period == null || timeout == null || retries == null || zones == 0
        ? null
        : new PollLoad(registers, zones, period, times.processingSeconds(), timeout, retries);
  }

  private static <T> Setting<T> orIfMissing(Setting<T> setting, T value) {
    return setting.isMissing() ? new Setting.Given<>(value, setting.place()) : setting;
  }

  /** A time above zero; null for any other. */
  private static @Nullable Double seconds(Setting<Interval> setting) {
    Interval interval = setting.orNull();
    return interval == null || interval.seconds() <= 0 ? null : interval.seconds();
  }
}
