package org.headhouse.linter.rules.address;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.rule.EarlierState;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** The order in which units have a right to their addresses. */
final class UnitsByRight {
  private UnitsByRight() {}

  /**
   * The units that had their address in the earlier state, since it is set at them, then the
   * others; each along the chain.
   */
  static List<Unit> of(Site site, RuleContext context) {
    EarlierState earlier = context.earlier();
    if (earlier == null) {
      return site.units();
    }
    List<Unit> units = new ArrayList<>();
    List<Unit> others = new ArrayList<>();
    for (Unit unit : site.units()) {
      Unit before = earlier.site().unit(unit.name().orNull());
      Integer address = before == null ? null : before.address().orNull();
      (address != null && unit.address().is(address) ? units : others).add(unit);
    }
    units.addAll(others);
    return units;
  }
}
