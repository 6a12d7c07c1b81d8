package org.headhouse.linter.line;

import java.util.ArrayList;
import java.util.Collections;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What goes over the line.
 *
 * @param broadcast from the head unit, or null
 * @param zonePolls supervision's polls of its zones over the line: one load for each processing
 *     time, all of one period; empty without any
 * @param equipmentPolls one load for each piece of equipment that is asked, by whomever
 */
public record Traffic(
    SerialFormat serial,
    @Nullable BroadcastLoad broadcast,
    List<PollLoad> zonePolls,
    List<PollLoad> equipmentPolls) {

  public Traffic {
    zonePolls = List.copyOf(zonePolls);
    equipmentPolls = List.copyOf(equipmentPolls);
  }

  /** All polls over the line. */
  public List<PollLoad> polls() {
    if (equipmentPolls.isEmpty() || zonePolls.isEmpty()) {
      return equipmentPolls.isEmpty() ? zonePolls : equipmentPolls;
    }
    List<PollLoad> all = new ArrayList<>(zonePolls);
    all.addAll(equipmentPolls);
    return Collections.unmodifiableList(all);
  }

  /**
   * The share of the time that the line is in use: {@code broadcast / its period + zones · poll /
   * their period}, summed over all polls (computed). Over 1, the traffic cannot be.
   */
  public double utilisation() {
    return broadcastShare() + pollShare();
  }

  /** The share of the time that the broadcast takes. */
  public double broadcastShare() {
    return broadcast == null ? 0 : broadcast.seconds(serial) / broadcast.periodSeconds();
  }

  /** The share of the time that all polls take. */
  public double pollShare() {
    return zonePollShare() + share(equipmentPolls);
  }

  /** The share of the time that supervision's polls of its zones take. */
  public double zonePollShare() {
    return share(zonePolls);
  }

  private double share(List<PollLoad> loads) {
    DoubleSummaryStatistics shares = new DoubleSummaryStatistics();
    for (PollLoad load : loads) {
      shares.accept(load.share(serial));
    }
    return shares.getSum();
  }

  /** The longest poll of one zone, all units answering; null without polls of zones. */
  public @Nullable Double zonePollSeconds() {
    return zonePolls.isEmpty() ? null : ReadingAge.longestSeconds(serial, zonePolls, false);
  }

  /**
   * How old a reading becomes, with its parts.
   *
   * @param lost how many broadcasts in a row are lost, 0 or more
   * @param oneSilent whether one polled unit is silent
   * @return null without a broadcast
   */
  public @Nullable ReadingAge age(int lost, boolean oneSilent) {
    return broadcast == null ? null : ReadingAge.worst(serial, broadcast, polls(), lost, oneSilent);
  }

  /**
   * How old the readings become at a unit when all answer and no broadcast is lost: {@code period
   * of the broadcast + longest other transaction + broadcast frame} (computed). Just before a
   * broadcast is due, a poll of one zone begins and is not interrupted; the readings count once the
   * last bit of the frame is there, the silence and turnaround after it do not.
   *
   * @return null without a broadcast
   */
  public @Nullable Double worstAgeSeconds() {
    ReadingAge age = age(0, false);
    return age == null ? null : age.totalSeconds();
  }

  /**
   * The same while one polled unit is silent: the longest other transaction is then the wait for
   * it, unless a poll with answers takes longer. The request is counted once for all tries; {@link
   * #age} counts each.
   *
   * @return null without a broadcast
   */
  public @Nullable Double worstAgeOneSilentSeconds() {
    if (broadcast == null) {
      return null;
    }
    double other =
        polls().stream()
            .mapToDouble(poll -> Math.max(poll.seconds(serial), poll.silentSeconds(serial)))
            .max()
            .orElse(0);
    return broadcast.periodSeconds() + other + broadcast.frameSeconds(serial);
  }

  /** The same traffic at another rate. */
  public Traffic withBaud(int baud) {
    return new Traffic(serial.withBaud(baud), broadcast, zonePolls, equipmentPolls);
  }
}
