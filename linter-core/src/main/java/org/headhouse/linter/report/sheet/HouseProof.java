package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/**
 * What was seen of the vents of one unit, or of several of which the same was seen.
 *
 * @param house its name, or the names joined
 * @param wind whether wind closed them, and in which time
 * @param lost whether lost readings closed them
 */
record HouseProof(String house, String wind, String lost) {
  /** Of more houses those are put together of which the same was seen. */
  private static final int MOST_SINGLE = 48;

  private static final String NOT_SEEN = "not seen";

  /** Of the units that move vents, and of those of which the file does not say. */
  static List<HouseProof> of(Site site) {
    LastSeen last = LastSeen.of(site);
    List<Unit> moving = site.units().stream().filter(VentWords::mayMove).toList();
    return moving.size() > MOST_SINGLE
        ? together(moving, last)
        : moving.stream()
            .map(
                unit ->
                    new HouseProof(
                        PlainText.name(unit),
                        wind(last.of(Proof.Kind.STORM_RESPONSE, unit)),
                        lost(last.of(Proof.Kind.STALE_RESPONSE, unit))))
            .toList();
  }

  private static String wind(LastSeen.@Nullable Seen seen) {
    if (seen == null) {
      return NOT_SEEN;
    }
    String time = seen.closedIn().isEmpty() ? "" : ", in " + SpokenText.quantity(seen.closedIn());
    return "seen to close" + (time.isEmpty() ? ", not timed" : time);
  }

  /** As short as a list of many houses needs it, under a sentence that says what was seen. */
  String inShort() {
    return house + ": wind " + shortened(wind) + ", lost readings " + shortened(lost);
  }

  private static String shortened(String words) {
    return words
        .replace("seen to close, in ", "")
        .replace("seen to close, ", "")
        .replace("seen to close", "seen");
  }

  private static String lost(LastSeen.@Nullable Seen seen) {
    return seen == null ? NOT_SEEN : "seen to close";
  }

  private static List<HouseProof> together(List<Unit> units, LastSeen last) {
    Map<List<String>, List<String>> names = new LinkedHashMap<>();
    for (Unit unit : units) {
      String wind = last.of(Proof.Kind.STORM_RESPONSE, unit) == null ? NOT_SEEN : "seen to close";
      names
          .computeIfAbsent(
              List.of(wind, lost(last.of(Proof.Kind.STALE_RESPONSE, unit))),
              same -> new ArrayList<>())
          .add(PlainText.name(unit));
    }
    List<HouseProof> groups = new ArrayList<>();
    names.forEach(
        (same, houses) ->
            groups.add(
                new HouseProof(
                    SpokenText.count(houses.size(), "house") + ": " + String.join(", ", houses),
                    same.get(0),
                    same.get(1))));
    return groups;
  }
}
