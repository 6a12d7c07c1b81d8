package org.headhouse.linter.line;

import org.jspecify.annotations.Nullable;

/**
 * What goes over the line.
 *
 * @param broadcast from the head unit, or null
 * @param polls over the serial line, or null
 */
public record Traffic(
    SerialFormat serial, @Nullable BroadcastLoad broadcast, @Nullable PollLoad polls) {

  /**
   * The share of the time that the line is in use: {@code broadcast / its period + zones · poll /
   * their period} (computed). Over 1, the traffic cannot be.
   */
  public double utilisation() {
    return broadcastShare() + pollShare();
  }

  /** The share of the time that the broadcast takes. */
  public double broadcastShare() {
    return broadcast == null ? 0 : broadcast.seconds(serial) / broadcast.periodSeconds();
  }

  /** The share of the time that the polls take. */
  public double pollShare() {
    return polls == null ? 0 : polls.zones() * polls.seconds(serial) / polls.periodSeconds();
  }

  /**
   * How old the readings become at a unit when all answer: {@code period of the broadcast + longest
   * other transaction + broadcast frame} (computed). Just before a broadcast is due, a poll of one
   * zone begins and is not interrupted; the readings count once the last bit of the frame is there,
   * the silence and turnaround after it do not.
   *
   * @return null without a broadcast
   */
  public @Nullable Double worstAgeSeconds() {
    return broadcast == null ? null : broadcast.periodSeconds() + overdueSeconds(broadcast, false);
  }

  /**
   * The same while one polled unit is silent: the longest other transaction is then the wait for
   * it, unless a poll with answers takes longer.
   *
   * @return null without a broadcast
   */
  public @Nullable Double worstAgeOneSilentSeconds() {
    return broadcast == null ? null : broadcast.periodSeconds() + overdueSeconds(broadcast, true);
  }

  /** From when a broadcast is due to its last bit, at worst. */
  double overdueSeconds(BroadcastLoad due, boolean oneSilent) {
    double otherSeconds = polls == null ? 0 : polls.seconds(serial);
    if (polls != null && oneSilent) {
      otherSeconds = Math.max(otherSeconds, polls.silentSeconds(serial));
    }
    return otherSeconds + due.frameSeconds(serial);
  }

  /** The same traffic at another rate. */
  public Traffic withBaud(int baud) {
    return new Traffic(serial.withBaud(baud), broadcast, polls);
  }
}
