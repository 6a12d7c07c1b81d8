package org.headhouse.linter.rules.address;

import java.util.HashMap;
import java.util.Map;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** {@code address.duplicate}. */
public final class AddressDuplicate implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of("address.duplicate", "No two units share an address.", Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Map<Integer, Unit> first = new HashMap<>();
    for (Unit unit : site.units()) {
      Integer address = unit.address().orNull();
      Unit other = address == null ? null : first.putIfAbsent(address, unit);
      if (address != null && other != null) {
        context.report(
            finding(
                    context,
                    unit,
                    other,
                    address,
                    ProposedAddresses.of(site, context.sitePolicy().keptFree()).of(unit))
                .fixedBy(Renumbering.of(site, context.sitePolicy().keptFree())));
      }
    }
  }

  private static Finding finding(
      RuleContext context, Unit unit, Unit other, int address, int free) {
    return context
        .finding(
            unit.address().place(),
            new Message(
                "address " + address + " is used twice",
                "both units answer at once, which disturbs the whole line",
                "give " + unit.called() + " address " + free))
        .related(
            other.address().place().region(),
            "address " + address + " is first used here, by " + other.called());
  }
}
