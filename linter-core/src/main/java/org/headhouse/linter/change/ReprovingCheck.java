package org.headhouse.linter.change;

import java.util.List;
import java.util.Set;
import org.headhouse.linter.site.Vents;
import org.headhouse.linter.stability.Internal;

/** Decides which differences make an earlier proof of the line invalid. */
@Internal
public final class ReprovingCheck {
  /** What only the file learns of a device that is the same. */
  private static final Set<String> DATA =
      Set.of("unit-load", "idle-bias", "isolated", "broadcasts", "latency");

  private static final Set<String> DATA_OF_LINE =
      Set.of("cable.velocity-factor", "cable.capacitance", "maximum-temperature");

  /** What a site asks of its line; the line itself is the same. */
  private static final Set<String> REQUIREMENTS =
      Set.of("weather-station.maximum-age", "weather-station.close-within");

  private ReprovingCheck() {}

  /**
   * Whether something has to be proved again: wiring, addresses, sources, units or what they are
   * set to, what is known of their types, the weather station, polling, or the settings of the line
   * differ. What is noted of a type for the first time, or not any more, changes nothing.
   */
  public static boolean isDue(List<Difference> differences) {
    return differences.stream().anyMatch(ReprovingCheck::concerns);
  }

  /** Whether a difference is one of those. */
  public static boolean concerns(Difference difference) {
    if (difference instanceof Difference.SiteSet site) {
      String what = site.setting().what();
      return isStation(what) || isPolling(what);
    }
    if (difference instanceof Difference.ItemSet item) {
      return !item.setting().what().startsWith("network.") && !isKnowledge(item.setting());
    }
    if (difference instanceof Difference.LineSet line) {
      return !DATA_OF_LINE.contains(line.setting().what());
    }
    if (difference instanceof Difference.TypeSet type) {
      return type.setting().from() != null && type.setting().to() != null;
    }
    return !(difference instanceof Difference.Renamed);
  }

  static boolean isStation(String what) {
    return what.startsWith("weather-station.") && !REQUIREMENTS.contains(what);
  }

  static boolean isPolling(String what) {
    return what.startsWith("supervision.polling") || what.equals("supervision.link");
  }

  /**
   * What only the file learns: a number that is written for the first time exchanges nothing, and
   * that a unit moves no vents takes no proof away.
   */
  private static boolean isKnowledge(ValueChange setting) {
    return switch (setting.what()) {
      case "serial-number" -> setting.from() == null || setting.to() == null;
      case "vents" -> setting.from() == null && Vents.NONE.word().equals(setting.to());
      default -> DATA.contains(setting.what());
    };
  }
}
