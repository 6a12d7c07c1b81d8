package org.headhouse.linter.rules.address;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Equipment;
import org.headhouse.linter.site.Sharers;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** {@code address.duplicate}. */
public final class AddressDuplicate implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of("address.duplicate", "No two devices share an address.", Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    AddressRemedies remedies = new AddressRemedies(site, context);
    Sharers<Integer> sharers = new Sharers<>();
    for (ChainItem item : inOrderOfRight(site, context)) {
      Integer address = item.address().orNull();
      List<ChainItem> others = address == null ? List.of() : sharers.before(address, item);
      if (!others.isEmpty()) {
        context.report(
            finding(context, item, others.get(0), remedies.words(item))
                .aboutOthers(ChainItem.names(others))
                .fixedBy(remedies.fix(item)));
      }
    }
  }

  /**
   * The head unit where it has its address, equipment, whose address is the site's affair, and the
   * other units, which are numbered around it.
   */
  private static List<ChainItem> inOrderOfRight(Site site, RuleContext context) {
    List<ChainItem> items = new ArrayList<>();
    Unit head = site.head();
    if (head != null && head.address().is(BusAddress.HEAD)) {
      items.add(head);
    }
    for (ChainItem item : site.items()) {
      if (item instanceof Equipment) {
        items.add(item);
      }
    }
    for (Unit unit : UnitsByRight.of(site, context)) {
      if (items.isEmpty() || !unit.isSameItemAs(items.get(0))) {
        items.add(unit);
      }
    }
    return items;
  }

  private static Finding finding(
      RuleContext context, ChainItem item, ChainItem other, String remedy) {
    String address = "address " + item.address().or(0);
    return context
        .finding(
            item.address().place(),
            new Message(
                address + " is used twice",
                other instanceof Unit && item instanceof Unit
                    ? "both units answer at once, which disturbs the whole line"
                    : "both devices answer at once, which disturbs the whole line",
                remedy))
        .related(
            other.address().place().region(),
            address + " is first used here, by " + other.called());
  }
}
