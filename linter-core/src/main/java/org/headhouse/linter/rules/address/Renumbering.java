package org.headhouse.linter.rules.address;

import java.util.ArrayList;
import java.util.List;
import java.util.PrimitiveIterator;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/**
 * The addresses 1, 2, 3 and so on along the chain, but for those that are kept free or held. Every
 * rule on addresses accepts them, so this one fix serves them all.
 */
public final class Renumbering {
  private Renumbering() {}

  /** The fix, or null where an address is not understood or a unit cannot be set to its number. */
  public static @Nullable FixDraft of(Site site, RuleContext context) {
    List<Unit> units = site.units();
    Unit head = site.head();
    if (head == null || !head.isSameItemAs(units.get(0))) {
      return null;
    }
    List<Edit> edits = new ArrayList<>();
    PrimitiveIterator.OfInt numbers = HandedOut.never(site, context).others().iterator();
    int number = 0;
    for (Unit unit : units) {
      if (!numbers.hasNext()) {
        return null;
      }
      number = numbers.nextInt();
      if (!unit.address().isGiven()
          || BusAddress.isReserved(number)
          || number > unit.type().addressLimit()) {
        return null;
      }
      if (!unit.address().is(number)) {
        edits.add(Edit.plain(unit.address().place(), number));
      }
    }
    return FixDraft.onSite(
        "Number the units 1 to "
            + number
            + " along the chain"
            + (number > units.size() ? ", without the addresses that are kept free" : ""),
        edits.toArray(Edit[]::new));
  }
}
