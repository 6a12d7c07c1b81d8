package org.headhouse.linter.rules.conductors;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.ParameterType;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.Connection;
import org.headhouse.linter.site.GalvanicSection;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/**
 * {@code conductors.ground}: common practice, no source; MODBUS over Serial Line V1.02 §3.3.2 and
 * §3.4.4 run a common to every device.
 */
public final class ConductorsGround implements SiteRule {
  /** One of the two places where ground may be landed. */
  public static final String EVERY_UNIT = "every-unit";

  /** Makes {@link SitePolicy#groundAtEveryUnit}. */
  public static final Parameter<String> LANDED =
      new Parameter<>(
          "landed",
          "where ground is landed: at the head unit only, or at every unit",
          ParameterType.choice("head", EVERY_UNIT),
          "head");

  /** What is known of the rule. */
  public static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "conductors.ground",
              "The drain of the shield is connected to ground once in each galvanic section; in the section of the head unit, at the head unit.",
              Level.WARNING,
              LANDED)
          .yieldingTo("head.missing", "head.duplicate");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Unit head = site.head();
    if (head == null) {
      return;
    }
    for (GalvanicSection section : site.galvanicSections()) {
      if (context.sitePolicy().groundAtEveryUnit()) {
        checkEveryUnit(section, context);
      } else {
        checkOnce(section, head, context);
      }
    }
  }

  private static void checkEveryUnit(GalvanicSection section, RuleContext context) {
    for (ChainItem item : section.items()) {
      List<Connection> connections = section.connections(item);
      if (item instanceof Unit
          && !Landed.isUnknown(connections)
          && !Landed.has(connections, Conductor.G)) {
        reportMissing(item, connections, context);
      }
    }
  }

  /** In the section of the head unit at the head unit, in any other at one item. */
  private static void checkOnce(GalvanicSection section, Unit head, RuleContext context) {
    ChainItem firstKnown = null;
    boolean headLacks = false;
    List<ChainItem> landed = new ArrayList<>(1);
    boolean allKnown = true;
    boolean ofHead = false;
    for (ChainItem item : section.items()) {
      List<Connection> connections = section.connections(item);
      boolean isHead = item.isSameItemAs(head);
      ofHead = ofHead || isHead;
      if (Landed.isUnknown(connections)) {
        allKnown = allKnown && !Landed.isFaulty(connections);
      } else {
        firstKnown = firstKnown == null ? item : firstKnown;
        if (Landed.has(connections, Conductor.G)) {
          landed.add(item);
        } else {
          headLacks = headLacks || isHead;
        }
      }
    }
    ChainItem place = ofHead ? head : landed.isEmpty() ? null : landed.get(0);
    if (headLacks && landed.isEmpty()) {
      reportMissing(head, section.connections(head), context);
    } else if (headLacks) {
      ChainItem other = landed.remove(0);
      reportElsewhere(other, head, section, context);
    } else if (place == null && allKnown && firstKnown != null) {
      reportMissing(firstKnown, section.connections(firstKnown), context);
    }
    for (ChainItem item : landed) {
      if (place != null && !item.isSameItemAs(place)) {
        reportMore(item, place, section.connections(item), context);
      }
    }
  }

  private static void reportMissing(
      ChainItem item, List<Connection> connections, RuleContext context) {
    Setting<List<Setting<Conductor>>> conductors = connections.get(0).conductors();
    context.report(
        context
            .finding(
                conductors.place(),
                new Message(
                    "ground is not connected at " + item.called(),
                    "the shield of this section is not grounded, and noise stays on the pair",
                    "isolate the supply, connect G, and add it to the list"))
            .fixedBy(FixDraft.proposed("Connect G at " + item.called(), landed(conductors))));
  }

  /** One mistake: ground is landed, but not where it belongs. */
  private static void reportElsewhere(
      ChainItem item, ChainItem head, GalvanicSection section, RuleContext context) {
    Setting<List<Setting<Conductor>>> conductors = section.connections(head).get(0).conductors();
    List<Edit> edits = new ArrayList<>();
    edits.add(landed(conductors));
    edits.addAll(taken(section.connections(item)));
    context.report(
        context
            .finding(
                conductors.place(),
                new Message(
                    "ground is connected at " + item.called() + " instead of at " + head.called(),
                    "people look for the ground at the head unit, find none, and connect a"
                        + " second one",
                    "isolate the supply, connect G at "
                        + head.called()
                        + " only, and move it from the other list to this one"))
            .about("at " + item.called())
            .related(item.name().place().region(), "ground is connected here")
            .fixedBy(
                FixDraft.proposed(
                    "Connect G at " + head.called() + " instead of " + item.called(),
                    edits.toArray(Edit[]::new))));
  }

  private static Edit landed(Setting<List<Setting<Conductor>>> conductors) {
    return new Edit.AddItems(
        conductors.place(), conductors.or(List.of()).size(), List.of(Conductor.G.word()));
  }

  private static List<Edit> taken(List<Connection> connections) {
    List<Edit> edits = new ArrayList<>();
    for (Connection connection : connections) {
      for (Setting<Conductor> one : connection.conductors().or(List.of())) {
        if (one.is(Conductor.G)) {
          edits.add(new Edit.RemoveItem(one.place()));
        }
      }
    }
    return edits;
  }

  private static void reportMore(
      ChainItem item, ChainItem place, List<Connection> connections, RuleContext context) {
    context.report(
        context
            .finding(
                connections.get(0).conductors().place(),
                new Message(
                    "ground is connected at " + item.called() + " too",
                    "ground at two places lets currents between buildings run through the cable",
                    "isolate the supply, disconnect G at "
                        + item.called()
                        + " and take it off the list; keep it at "
                        + place.called()))
            .fixedBy(
                FixDraft.proposed(
                    "Take G off the conductors of " + item.called(),
                    taken(connections).toArray(Edit[]::new))));
  }
}
