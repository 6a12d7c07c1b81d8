package org.headhouse.linter.figures;

import org.headhouse.linter.line.ClosingTime;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.stability.Internal;

/**
 * How long one unit takes from the gust to closed vents, at worst.
 *
 * @param closing how long its slowest vent takes, as it is counted: what the watch showed, else its
 *     {@code close-time}
 * @param time the sum with its parts
 */
@Internal
public record StormSum(Unit unit, Setting<Interval> closing, ClosingTime time) {

  /** Whether it gets the wind by the broadcast; the head unit has the station itself. */
  public boolean waitsForBroadcast() {
    return unit.isFollower();
  }

  /** Whether it closes only after {@code stale-after} where the line is dead. */
  public boolean closesOnDeadLine() {
    return unit.isFollower() && closesOnDeadLine(unit);
  }

  /** One that does not say is taken to close, which {@code outdoor.unsafe-fallback} asks for. */
  static boolean closesOnDeadLine(Unit unit) {
    return unit.onStaleReadings().isMissing()
        || unit.onStaleReadings().optional().filter(action -> action.closes()).isPresent();
  }
}
