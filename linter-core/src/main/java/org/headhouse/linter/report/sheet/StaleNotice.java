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
 * @param units all followers that do the same after the same time
 */
record StaleNotice(String after, String action, String units) {

  /** Of the followers with vents, and of those of which the file does not say. */
  static List<StaleNotice> of(Site site) {
    Map<List<String>, List<String>> names = new LinkedHashMap<>();
    int all = 0;
    for (Unit unit : site.units()) {
      if (unit.isFollower() && VentWords.mayMove(unit)) {
        List<String> same = List.of(VentWords.staleAfter(unit), VentWords.fallback(unit));
        names.computeIfAbsent(same, key -> new ArrayList<>()).add(PlainText.name(unit));
        all++;
      }
    }
    List<StaleNotice> notices = new ArrayList<>();
    int count = all;
    names.forEach(
        (same, units) ->
            notices.add(
                new StaleNotice(
                    same.get(0),
                    same.get(1),
                    units.size() == count && count > 1
                        ? "all " + count + " followers with vents"
                        : String.join(", ", units))));
    return notices;
  }
}
