package org.headhouse.linter.site;

import org.headhouse.linter.stability.Internal;

/**
 * What a unit moves, and by which readings.
 *
 * @param outdoor where it takes the outdoor readings from
 * @param vents those that it moves
 * @param onStaleReadings what it does with them once no reading has come for too long
 * @param staleAfter how long it goes on with a reading that does not come anew
 * @param closeTime from a reading over the limit until its slowest vent is shut
 */
public record VentControl(
    Setting<Outdoor> outdoor,
    Setting<Vents> vents,
    Setting<StaleAction> onStaleReadings,
    Setting<Interval> staleAfter,
    Setting<Interval> closeTime) {
  @Internal
  public VentControl {}
}
