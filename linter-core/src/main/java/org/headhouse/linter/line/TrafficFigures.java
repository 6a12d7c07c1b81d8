package org.headhouse.linter.line;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * The figures of the traffic.
 *
 * @param broadcastSeconds one broadcast with silence and turnaround, or null without one
 * @param pollSeconds the poll of one zone, the longest, or null where supervision polls none over
 *     the line
 * @param utilisation the share of the time that the line is in use
 * @param worstAgeSeconds of the readings at a unit with no broadcast lost, or null without one
 * @param worstAgeOneSilentSeconds the same while one polled unit is silent
 * @param lostBroadcasts how many in a row are lost in the two that follow
 * @param age of the readings at a unit with its parts, or null without a broadcast
 * @param ageOneSilent the same while one polled unit is silent
 */
public record TrafficFigures(
    double characterSeconds,
    @Nullable Double broadcastSeconds,
    @Nullable Double pollSeconds,
    double utilisation,
    @Nullable Double worstAgeSeconds,
    @Nullable Double worstAgeOneSilentSeconds,
    int lostBroadcasts,
    @Nullable ReadingAge age,
    @Nullable ReadingAge ageOneSilent) {
  @Internal
  public TrafficFigures {}

  /**
   * Computes all figures; the formulas are with {@link Traffic} and its parts.
   *
   * @param lostBroadcasts how many in a row are lost, 0 or more
   */
  public static TrafficFigures of(Traffic traffic, int lostBroadcasts) {
    SerialFormat serial = traffic.serial();
    BroadcastLoad broadcast = traffic.broadcast();
    return new TrafficFigures(
        serial.characterSeconds(),
        broadcast == null ? null : broadcast.seconds(serial),
        traffic.zonePollSeconds(),
        traffic.utilisation(),
        traffic.worstAgeSeconds(),
        traffic.worstAgeOneSilentSeconds(),
        lostBroadcasts,
        traffic.age(lostBroadcasts, false),
        traffic.age(lostBroadcasts, true));
  }
}
