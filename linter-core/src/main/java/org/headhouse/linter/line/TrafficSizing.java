package org.headhouse.linter.line;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Predicate;
import org.headhouse.linter.stability.Internal;

/** What to change so that the traffic fits. */
@Internal
public final class TrafficSizing {
  private TrafficSizing() {}

  /**
   * The shortest period of the broadcast at which the line is in use for no more than a share of
   * the time, the polls as they are: {@code broadcast / (share − share of the polls)} (computed).
   *
   * @return empty where the polls alone take the share, or there is no broadcast
   */
  public static OptionalDouble shortestBroadcastPeriodSeconds(Traffic traffic, double utilisation) {
    BroadcastLoad broadcast = traffic.broadcast();
    double left = utilisation - traffic.pollShare();
    return broadcast == null || left <= 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(broadcast.seconds(traffic.serial()) / left);
  }

  /**
   * The shortest period of some polls at which the line is in use for no more than a share of the
   * time, all else as it is: {@code zones · poll / (share − share of all else)} (computed).
   *
   * @param polls of one period, some of those of the traffic
   * @return empty where all else takes the share, or there are no such polls
   */
  public static OptionalDouble shortestPollPeriodSeconds(
      Traffic traffic, List<PollLoad> polls, double utilisation) {
    double share = polls.stream().mapToDouble(poll -> poll.share(traffic.serial())).sum();
    double left = utilisation - (traffic.utilisation() - share);
    return polls.isEmpty() || left <= 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(share * polls.get(0).periodSeconds() / left);
  }

  /**
   * The lowest standard rate above the present one at which the traffic fits.
   *
   * @param fits what the traffic has to fulfil, such as a utilisation or an age of readings
   */
  public static OptionalInt nextBaud(Traffic traffic, Predicate<Traffic> fits) {
    return SerialFormat.STANDARD_RATES.stream()
        .mapToInt(Integer::intValue)
        .filter(baud -> baud > traffic.serial().baud())
        .filter(baud -> fits.test(traffic.withBaud(baud)))
        .findFirst();
  }
}
