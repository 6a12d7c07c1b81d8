package org.headhouse.linter.rules.conductors;

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
import org.headhouse.linter.site.Conductor;
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
              "Ground is landed once, at the head unit.",
              Level.WARNING,
              LANDED)
          .yieldingTo("head.missing", "head.duplicate");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    boolean everywhere = context.sitePolicy().groundAtEveryUnit();
    Unit head = site.head();
    if (head == null) {
      return;
    }
    for (Unit unit : site.units()) {
      List<Setting<Conductor>> landed = unit.conductors().orNull();
      if (landed == null || !Landed.isUnderstood(landed)) {
        continue;
      }
      boolean wanted = everywhere || unit.isSameItemAs(head);
      boolean has = Landed.has(Conductor.G, landed);
      if (wanted != has) {
        context.report(
            context
                .finding(unit.conductors().place(), has ? tooMany(unit, head) : missing(unit))
                .fixedBy(has ? remove(unit, landed, site) : add(unit, landed, site)));
      }
    }
  }

  private static FixDraft add(Unit unit, List<Setting<Conductor>> landed, Site site) {
    return FixDraft.onSite(
        site.isPlanned(),
        "Land G at " + unit.called(),
        new Edit.AddItems(unit.conductors().place(), landed.size(), List.of(Conductor.G.word())));
  }

  private static FixDraft remove(Unit unit, List<Setting<Conductor>> landed, Site site) {
    return FixDraft.onSite(
        site.isPlanned(),
        "Take G off the conductors of " + unit.called(),
        landed.stream()
            .filter(setting -> setting.is(Conductor.G))
            .map(setting -> new Edit.RemoveItem(setting.place()))
            .toArray(Edit[]::new));
  }

  private static Message missing(Unit unit) {
    return new Message(
        "at " + unit.called() + " ground is not landed",
        "without a common the levels of the units drift apart",
        "isolate the supply, land G, and add it to the list");
  }

  private static Message tooMany(Unit unit, Unit head) {
    return new Message(
        "at " + unit.called() + " ground is landed too",
        "ground at two places lets currents between buildings run through the cable",
        "land G at " + head.called() + " only, and take it off the list here");
  }
}
