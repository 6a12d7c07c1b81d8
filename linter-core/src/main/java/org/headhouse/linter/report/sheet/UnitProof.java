package org.headhouse.linter.report.sheet;

import java.util.List;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.proof.StaleResponse;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/**
 * What is seen at one unit.
 *
 * @param readings whether the shared readings are looked for on its display
 * @param lastReadings when the record says that they were seen; empty for never
 * @param vents which vents it moves
 * @param mayMove whether it moves vents, or may do so because the file does not say, or its record
 *     says otherwise
 * @param lastStorm when the record says that wind shut its vents; empty for never
 * @param lastLimit the wind limit that was passed then; empty where none is written
 * @param lastClosedIn what the watch showed then; empty where nobody took it
 * @param closeTime how long its slowest vent takes to shut
 * @param fallback what its vents do once readings stop
 * @param staysOpen whether that is not to close
 * @param staleAfter after which time they do so
 * @param lastStale when the record says that it did so; empty for never
 */
record UnitProof(
    String name,
    String address,
    boolean readings,
    String lastReadings,
    String vents,
    boolean mayMove,
    String lastStorm,
    String lastLimit,
    String lastClosedIn,
    String closeTime,
    String fallback,
    boolean staysOpen,
    String staleAfter,
    String lastStale) {

  private static final String DISPUTED = "no vents by the file, but seen to close: look";

  static List<UnitProof> of(Site site) {
    LastSeen last = LastSeen.of(site);
    return site.units().stream().map(unit -> of(unit, last)).toList();
  }

  private static UnitProof of(Unit unit, LastSeen last) {
    LastSeen.Seen storm = last.of(Proof.Kind.STORM_RESPONSE, unit);
    boolean isDisputed = last.disputesNoVents(unit);
    return new UnitProof(
        PlainText.name(unit),
        UnitWords.address(unit),
        unit.isFollower(),
        day(last.of(Proof.Kind.READINGS, unit)),
        isDisputed ? DISPUTED : VentWords.vents(unit),
        VentWords.mayMove(unit) || isDisputed,
        day(storm),
        storm == null ? "" : storm.limit(),
        storm == null ? "" : storm.closedIn(),
        VentWords.closeTime(unit),
        VentWords.fallback(unit),
        StaleResponse.staysOpen(unit),
        VentWords.staleAfter(unit),
        day(last.of(Proof.Kind.STALE_RESPONSE, unit)));
  }

  /** What the file says that is to be seen: {@code close after 60 s}. */
  String onLostReadings() {
    if (fallback.equals(VentWords.ASK)) {
      return VentWords.ASK;
    }
    String after = fallback.contains(",") ? ", after " : staysOpen ? ", also after " : " after ";
    return fallback
        + after
        + (staleAfter.equals(VentWords.ASK) ? "an unknown time: ask" : staleAfter);
  }

  /** Whether it has no vents by the file, and its record says that they closed. */
  boolean isDisputed() {
    return vents.equals(DISPUTED);
  }

  private static String day(LastSeen.@Nullable Seen seen) {
    return seen == null ? "" : seen.day().isEmpty() ? "seen, no date" : seen.day();
  }
}
