package org.headhouse.linter.rules.conductors;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.Connection;
import org.headhouse.linter.site.GalvanicSection;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;

/** {@code conductors.common}: MODBUS over Serial Line V1.02 §3.3.2 and §3.4.4. */
public final class ConductorsCommon implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "conductors.common",
          "The common of the interfaces is connected at every item of a galvanic section or at"
              + " none; if the section has an isolated interface, at every item.",
          Level.WARNING);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (GalvanicSection section : site.galvanicSections()) {
      List<ChainItem> with = new ArrayList<>(0);
      List<ChainItem> without = new ArrayList<>();
      List<ChainItem> isolated = new ArrayList<>(0);
      for (ChainItem item : section.items()) {
        List<Connection> connections = section.connections(item);
        if (!Landed.isUnknown(connections)) {
          (Landed.has(connections, Conductor.C) ? with : without).add(item);
        }
        if (item.isolated().is(true) && !isBetweenSections(item, section)) {
          isolated.add(item);
        }
      }
      if (!with.isEmpty() && !without.isEmpty()) {
        context.report(atSome(with, without, section, context));
      } else if (with.isEmpty() && !isolated.isEmpty() && !without.isEmpty()) {
        context.report(nowhere(isolated, without, section, context));
      }
    }
  }

  /** A repeater that ends the section has the common of each side for itself. */
  private static boolean isBetweenSections(ChainItem item, GalvanicSection section) {
    return item instanceof Repeater && section.connections(item).size() == 1;
  }

  private static Finding atSome(
      List<ChainItem> with, List<ChainItem> without, GalvanicSection section, RuleContext context) {
    ChainItem first = without.get(0);
    int others = without.size() - 1;
    return context
        .finding(
            section.connections(first).get(0).conductors().place(),
            new Message(
                "the common is not connected at "
                    + first.called()
                    + (others == 0 ? "" : " and " + others + (others == 1 ? " other" : " others"))
                    + ", but it is at "
                    + with.get(0).called(),
                "an interface that lacks the common may drift outside the -7 to 12 V that"
                    + " receivers tolerate",
                "isolate the supply, connect C at every item of the section, and add it to each list"))
        .aboutItems(ChainItem.names(without))
        .related(with.get(0).name().place().region(), "the common is connected here")
        .fixedBy(landed(without, section));
  }

  private static Finding nowhere(
      List<ChainItem> isolated,
      List<ChainItem> without,
      GalvanicSection section,
      RuleContext context) {
    ChainItem first = isolated.get(0);
    int others = isolated.size() - 1;
    return context
        .finding(
            first.name().place(),
            new Message(
                (others == 0
                        ? "the interface of " + first.called() + " is"
                        : "the interfaces of "
                            + first.called()
                            + " and "
                            + others
                            + (others == 1 ? " other are" : " others are"))
                    + " isolated, and no common is connected in "
                    + (others == 0 ? "its" : "their")
                    + " section",
                "nothing keeps an isolated interface within the -7 to 12 V that receivers tolerate",
                "run a common to every item of the section, isolate the supply, connect it to C, and"
                    + " add it to each list"))
        .at(Level.NOTE)
        .aboutItems(ChainItem.names(isolated))
        .fixedBy(landed(without, section));
  }

  private static FixDraft landed(List<ChainItem> without, GalvanicSection section) {
    List<Edit> edits = new ArrayList<>();
    for (ChainItem item : without) {
      for (Connection connection : section.connections(item)) {
        Setting<List<Setting<Conductor>>> conductors = connection.conductors();
        edits.add(
            new Edit.AddItems(
                conductors.place(), conductors.or(List.of()).size(), List.of(Conductor.C.word())));
      }
    }
    return FixDraft.proposed(
        "Connect the common at every item of the section", edits.toArray(Edit[]::new));
  }
}
