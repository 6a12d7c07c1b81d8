package org.headhouse.linter.report.sheet;

import java.util.List;
import org.headhouse.linter.site.Site;

/**
 * What is seen at one unit.
 *
 * @param readings whether the shared readings are looked for on its display
 * @param vents which vents it moves
 * @param mayMove whether it moves vents, or may do so because the file does not say
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
    String closeTime,
    String fallback,
    String staleAfter) {

  static List<UnitProof> of(Site site) {
    return site.units().stream()
        .map(
            unit ->
                new UnitProof(
                    PlainText.name(unit),
                    UnitWords.address(unit),
                    unit.isFollower(),
                    VentWords.vents(unit),
                    VentWords.mayMove(unit),
                    VentWords.closeTime(unit),
                    VentWords.fallback(unit),
                    VentWords.staleAfter(unit)))
        .toList();
  }
}
