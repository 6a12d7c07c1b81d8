package org.headhouse.linter.report.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.StormResponse;
import org.headhouse.linter.site.WindSpeed;

/**
 * What is seen at one unit.
 *
 * @param readings whether the shared readings are looked for on its display
 * @param vents which vents it moves
 * @param mayMove whether it moves vents, or may do so because the file does not say
 * @param lastLimit the wind limit that the record in the file has; empty for none
 * @param closeTime how long its slowest vent takes to shut
 * @param fallback what its vents do once readings stop
 * @param staleAfter after which time they do so
 */
record UnitProof(
    String name,
    String address,
    boolean readings,
    String vents,
    boolean mayMove,
    String lastLimit,
    String closeTime,
    String fallback,
    String staleAfter) {

  static List<UnitProof> of(Site site) {
    Map<String, String> limits = lastLimits(site);
    return site.units().stream()
        .map(
            unit ->
                new UnitProof(
                    PlainText.name(unit),
                    UnitWords.address(unit),
                    unit.isFollower(),
                    VentWords.vents(unit),
                    VentWords.mayMove(unit),
                    limits.getOrDefault(unit.name().or(""), ""),
                    VentWords.closeTime(unit),
                    VentWords.fallback(unit),
                    VentWords.staleAfter(unit)))
        .toList();
  }

  /** By the names of the units; the latest, as records are in the order of the visits. */
  private static Map<String, String> lastLimits(Site site) {
    Map<String, String> limits = new HashMap<>();
    Commissioning commissioning = site.commissioning().orNull();
    if (commissioning != null) {
      for (ProvingRecord proved : commissioning.records()) {
        for (Setting<StormResponse> one : proved.stormResponseSeen().or(List.of())) {
          StormResponse seen = one.orNull();
          WindSpeed limit = seen == null ? null : seen.limit().orNull();
          if (seen != null && limit != null) {
            limits.put(seen.unit().or(""), PlainText.name(limit.written()));
          }
        }
      }
    }
    return limits;
  }
}
