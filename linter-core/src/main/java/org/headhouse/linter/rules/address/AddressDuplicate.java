package org.headhouse.linter.rules.address;

import java.util.HashMap;
import java.util.Map;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Equipment;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

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
    Map<Integer, ChainItem> first = new HashMap<>();
    for (ChainItem item : site.items()) {
      if (item instanceof Equipment equipment) {
        ChainItem other = firstAt(equipment, first);
        if (other != null) {
          String remedy = "give " + equipment.called() + " an address that nothing else has";
          context.report(finding(context, equipment, other, remedy));
        }
      }
    }
    for (Unit unit : site.units()) {
      ChainItem other = firstAt(unit, first);
      if (other != null) {
        int free = ProposedAddresses.of(site, context.sitePolicy().keptFree()).of(unit);
        String remedy = "give " + unit.called() + " address " + free;
        context.report(
            finding(context, unit, other, remedy)
                .fixedBy(Renumbering.of(site, context.sitePolicy().keptFree())));
      }
    }
  }

  /** What has the address of an item already; null, and remembered, where nothing has. */
  private static @Nullable ChainItem firstAt(ChainItem item, Map<Integer, ChainItem> first) {
    Integer address = item.address().orNull();
    return address == null ? null : first.putIfAbsent(address, item);
  }

  private static Finding finding(
      RuleContext context, ChainItem item, ChainItem other, String remedy) {
    String address = "address " + item.address().or(0);
    return context
        .finding(
            item.address().place(),
            new Message(
                address + " is used twice",
                other instanceof Unit
                    ? "both units answer at once, which disturbs the whole line"
                    : "both devices answer at once, which disturbs the whole line",
                remedy))
        .related(
            other.address().place().region(),
            address + " is first used here, by " + other.called());
  }
}
