package org.headhouse.linter.rules.equipment;

import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Broadcast;
import org.headhouse.linter.site.BroadcastHandling;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Equipment;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Place;

/** {@code equipment.broadcast}: MODBUS over Serial Line V1.02 §2.1. */
public final class EquipmentBroadcast implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "equipment.broadcast",
          "No equipment acts on the broadcasts of the head unit.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    LineSettings line = site.line().orNull();
    Broadcast broadcast = line == null ? null : line.broadcast().orNull();
    if (broadcast == null) {
      return;
    }
    for (ChainItem item : site.items()) {
      if (item instanceof Equipment equipment) {
        if (equipment.broadcasts().is(BroadcastHandling.OBEYED)) {
          context.report(obeyed(equipment, broadcast, context));
        } else if (equipment.broadcasts().isMissing()) {
          context.report(notKnown(equipment, broadcast, context).at(Level.WARNING));
        }
      }
    }
  }

  private static Finding obeyed(Equipment equipment, Broadcast broadcast, RuleContext context) {
    return finding(
        equipment.broadcasts().place(),
        new Message(
            equipment.called() + " obeys broadcasts, and the head unit sends them",
            "the readings overwrite its settings, so that it can start, dose or heat unasked",
            "if it can, set it to ignore broadcasts, and set broadcasts: ignored; otherwise"
                + " give it a line of its own"),
        broadcast,
        context);
  }

  private static Finding notKnown(Equipment equipment, Broadcast broadcast, RuleContext context) {
    return finding(
        equipment.name().place(),
        new Message(
            "the file does not say what " + equipment.called() + " does with broadcasts",
            "if it acts on them, the readings that the head unit broadcasts overwrite its settings",
            "check its manual, then set broadcasts: ignored or obeyed"),
        broadcast,
        context);
  }

  private static Finding finding(
      Place place, Message message, Broadcast broadcast, RuleContext context) {
    return context
        .finding(place, message)
        .related(broadcast.place().region(), "the head unit broadcasts");
  }
}
