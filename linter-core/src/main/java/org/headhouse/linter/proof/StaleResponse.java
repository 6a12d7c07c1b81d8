package org.headhouse.linter.proof;

import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.Vents;

/** What there is to see at a unit once its readings stop. */
public final class StaleResponse {
  private StaleResponse() {}

  /**
   * Whether the vents do not close by themselves then, as the unit is set: whoever saw it do so saw
   * nothing close, and somebody has to close them by hand.
   */
  public static boolean staysOpen(Unit unit) {
    return !unit.vents().is(Vents.NONE)
        && unit.onStaleReadings().optional().filter(action -> !action.closes()).isPresent();
  }
}
