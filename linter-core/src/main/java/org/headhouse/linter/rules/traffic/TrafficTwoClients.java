package org.headhouse.linter.rules.traffic;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Broadcast;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Equipment;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Link;
import org.headhouse.linter.site.OtherClients;
import org.headhouse.linter.site.Polled;
import org.headhouse.linter.site.PolledBy;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Supervision;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/** {@code traffic.two-clients}: MODBUS over Serial Line V1.02 §2.1. */
public final class TrafficTwoClients implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "traffic.two-clients",
              "Only one client at a time sends requests on the line.",
              Level.WARNING)
          .yieldingTo("head.missing", "head.duplicate");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Supervision software = site.supervision().orNull();
    Unit head = site.head();
    if (software == null || head == null || !software.link().is(Link.SERIAL)) {
      return;
    }
    Setting<OtherClients> others = head.type().serialPort().otherClients();
    Broadcast broadcast = broadcast(site);
    List<Equipment> asked = askedByHead(site);
    if (others.isMissing() && (broadcast != null || !asked.isEmpty())) {
      context.report(finding(context, software, head, broadcast, asked));
    }
  }

  private static @Nullable Broadcast broadcast(Site site) {
    LineSettings line = site.line().orNull();
    return line == null ? null : line.broadcast().orNull();
  }

  private static List<Equipment> askedByHead(Site site) {
    List<Equipment> asked = new ArrayList<>(0);
    for (ChainItem item : site.items()) {
      if (item instanceof Equipment equipment) {
        Polled polled = equipment.polled().orNull();
        if (polled != null && polled.by().is(PolledBy.HEAD)) {
          asked.add(equipment);
        }
      }
    }
    return asked;
  }

  private static Finding finding(
      RuleContext context,
      Supervision software,
      Unit head,
      @Nullable Broadcast broadcast,
      List<Equipment> asked) {
    Equipment first = asked.isEmpty() ? null : asked.get(0);
    List<Finding.Case> cases = new ArrayList<>();
    if (broadcast != null) {
      cases.add(new Finding.Case(null, "broadcast"));
    }
    asked.forEach(one -> cases.add(new Finding.Case(null, "asks " + one.called())));
    String does =
        broadcast == null
            ? "asks equipment"
            : first == null ? "broadcasts" : "broadcasts and asks equipment";
    String type = head.deviceType().orNull();
    Finding finding =
        context
            .finding(
                software.link().place(),
                new Message(
                    "the software polls a line on which the head unit " + does,
                    "if both send at once, both messages are destroyed, and readings and alarms"
                        + " get lost",
                    "poll over Ethernet, or through the head unit if it can pass polls on, and"
                        + " set link to that; if the manual says that the head unit waits for"
                        + " another client, set other-clients: waits in "
                        + (type == null ? "its device type" : "the device type \"" + type + "\"")))
            .related(head.name().place().region(), head.called() + " is the head unit");
    if (broadcast != null) {
      finding = finding.related(broadcast.place().region(), "it broadcasts");
    }
    finding = finding.about(cases);
    return first == null
        ? finding
        : finding.related(first.polled().place().region(), "it asks " + first.called());
  }
}
