package org.headhouse.linter.rules.address;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/**
 * The addresses 1, 2, 3 and so on along the chain: the one set of addresses that every rule on them
 * is content with, so it mends whichever of them is broken.
 */
public final class Renumbering {
  private Renumbering() {}

  /** The fix, or null where an address is not understood or a unit cannot be set to its number. */
  public static @Nullable FixDraft of(Site site) {
    List<Unit> units = site.units();
    Unit head = site.head();
    if (head == null || !head.equals(units.get(0))) {
      return null;
    }
    List<Edit> edits = new ArrayList<>();
    for (int i = 0; i < units.size(); i++) {
      Unit unit = units.get(i);
      int number = i + 1;
      if (!unit.address().isGiven()
          || ReservedAddress.isReserved(number)
          || number > unit.type().addressLimit()) {
        return null;
      }
      if (!unit.address().is(number)) {
        edits.add(Edit.plain(unit.address().place(), number));
      }
    }
    return FixDraft.onSite(
        site.isPlanned(),
        "Number the units 1 to " + units.size() + " along the chain",
        edits.toArray(Edit[]::new));
  }
}
