package org.headhouse.linter.visit;

import org.headhouse.linter.draft.Cell;
import org.headhouse.linter.draft.Faults;
import org.headhouse.linter.proof.StaleResponse;
import org.headhouse.linter.proof.VisitEntry;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Unit;

/**
 * Whether vents did without readings what the file sets. The record only names the unit: where the
 * two differ, it would say of vents that stay open that they close, or the other way round.
 */
final class SeenResponse {
  private SeenResponse() {}

  /** Whether something else was seen, which is reported. */
  static boolean reportsOther(
      VisitEntry entry, Found value, ChainItem item, Cell found, Faults faults) {
    boolean shut = entry == VisitEntry.STALE_RESPONSE;
    boolean isOther =
        (shut || entry == VisitEntry.STALE_HOLD)
            && value == Found.Seen.YES
            && item instanceof Unit unit
            && StaleResponse.staysOpen(unit) == shut;
    if (isOther) {
      faults.add(
          found,
          item.called()
              + (shut
                  ? " was seen to shut its vents without readings, and the file sets them to stay"
                  : " was seen to leave its vents where they are without readings, and the file does"
                      + " not set that"),
          "the unit or the file is wrong, and whoever relies on either leaves vents open",
          "look at the unit, set on-stale-readings at the unit and in the file alike, and try it"
              + " again with a new list");
    }
    return isOther;
  }
}
