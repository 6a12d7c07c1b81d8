package org.headhouse.linter.rules.conductors;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** {@code conductors.pair-missing}: common practice, no source. */
public final class ConductorsPairMissing implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "conductors.pair-missing",
          "Both conductors of the pair are connected at every item.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (Terminals terminals : Terminals.of(site)) {
      Setting<List<Setting<Conductor>>> conductors = terminals.connection().conductors();
      List<Setting<Conductor>> landed = conductors.orNull();
      if (landed == null || !Landed.isUnderstood(landed) || Landed.hasPair(landed)) {
        continue;
      }
      List<String> missing = new ArrayList<>();
      for (Conductor conductor : List.of(Conductor.A, Conductor.B)) {
        if (!Landed.has(conductor, landed)) {
          missing.add(conductor.word());
        }
      }
      String which = String.join(" and ", missing);
      context.report(
          context
              .finding(
                  conductors.place(),
                  new Message(
                      (missing.size() == 1
                              ? "conductor " + which + " is"
                              : "conductors " + which + " are")
                          + " not connected at "
                          + terminals.called(),
                      half(terminals.item()),
                      "isolate the supply, connect " + which + ", and add it to the list"))
              .fixedBy(fix(terminals, landed, missing)));
    }
  }

  private static String half(ChainItem item) {
    return (item instanceof Unit ? "a unit" : "a device")
        + " on half the pair picks up noise, and can block the line";
  }

  private static FixDraft fix(
      Terminals terminals, List<Setting<Conductor>> landed, List<String> missing) {
    boolean behindFirst = !landed.isEmpty() && landed.get(0).is(Conductor.A);
    return FixDraft.onSite(
        "Land " + String.join(" and ", missing) + " at " + terminals.called(),
        new Edit.AddItems(
            terminals.connection().conductors().place(), behindFirst ? 1 : 0, missing));
  }
}
