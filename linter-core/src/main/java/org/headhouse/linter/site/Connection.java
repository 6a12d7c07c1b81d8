package org.headhouse.linter.site;

import java.util.List;
import org.headhouse.linter.stability.Internal;

/**
 * How an item is connected to the pair, on one of its sides.
 *
 * @param conductors what is landed on its line terminals
 * @param termination what is connected across the pair
 * @param pair whether D1 and D0 are landed straight or crossed
 * @param stub the length of the branch that it hangs on; missing where it is on the trunk itself
 * @param unitLoad its load as the item says, 1 being 12 kΩ from each conductor to common; the type
 *     may say it as well
 * @param idleBias whether it needs bias, as the item says; the type may say it as well
 */
public record Connection(
    Setting<List<Setting<Conductor>>> conductors,
    Setting<Termination> termination,
    Setting<Pair> pair,
    Setting<Length> stub,
    Setting<Double> unitLoad,
    Setting<IdleBias> idleBias) {
  @Internal
  public Connection {}
}
