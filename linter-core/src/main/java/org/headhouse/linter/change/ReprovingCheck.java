package org.headhouse.linter.change;

import java.util.List;
import org.headhouse.linter.stability.Internal;

/** Decides which differences make an earlier proof of the line invalid. */
@Internal
public final class ReprovingCheck {
  private ReprovingCheck() {}

  /**
   * Whether the line has to be proved again: wiring, addresses, sources or line settings differ.
   */
  public static boolean isDue(List<Difference> differences) {
    return differences.stream().anyMatch(ReprovingCheck::concerns);
  }

  /** Whether a difference is one of those. */
  public static boolean concerns(Difference difference) {
    if (difference instanceof Difference.LineSet line) {
      return !line.setting().what().startsWith("traffic.");
    }
    if (difference instanceof Difference.SiteSet site) {
      return site.setting().what().equals("weather-station.at");
    }
    return !(difference instanceof Difference.Renamed)
        && !(difference instanceof Difference.ItemSet);
  }
}
