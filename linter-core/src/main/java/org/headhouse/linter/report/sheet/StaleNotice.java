package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/**
 * What people in the houses have to expect once the broadcast stops.
 *
 * @param after the stale time of the units
 * @param action what their vents do then
 * @param units the followers that do the same after the same time; those that most do are counted
 */
record StaleNotice(String after, String action, String units) {

  private static final int MOST_NAMES = 8;

  /** Of the followers with vents, and of those of which the file does not say. */
  static List<StaleNotice> of(Site site) {
    Map<List<String>, List<String>> names = new LinkedHashMap<>();
    LastSeen last = LastSeen.of(site);
    for (Unit unit : site.units()) {
      if (unit.isFollower() && (VentWords.mayMove(unit) || last.disputesNoVents(unit))) {
        List<String> same = List.of(after(unit), action(unit));
        names.computeIfAbsent(same, key -> new ArrayList<>()).add(PlainText.name(unit));
      }
    }
    int most = names.values().stream().mapToInt(List::size).max().orElse(0);
    List<StaleNotice> notices = new ArrayList<>();
    List<StaleNotice> others = new ArrayList<>();
    names.forEach(
        (same, units) -> {
          if (others.isEmpty() && units.size() == most && most > MOST_NAMES) {
            String which = (names.size() == 1 ? "all " : "the other ") + most;
            others.add(new StaleNotice(same.get(0), same.get(1), which + " followers with vents"));
          } else {
            notices.add(new StaleNotice(same.get(0), same.get(1), String.join(", ", units)));
          }
        });
    notices.addAll(others);
    return notices;
  }

  private static String after(Unit unit) {
    return unit.staleAfter().isGiven()
        ? VentWords.staleAfter(unit)
        : "a time that is not known (ask)";
  }

  private static String action(Unit unit) {
    return unit.onStaleReadings().isGiven()
        ? "the vents " + VentWords.fallback(unit)
        : "what the vents do is not known (ask)";
  }
}
