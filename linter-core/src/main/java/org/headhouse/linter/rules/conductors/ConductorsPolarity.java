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
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.Pair;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** {@code conductors.polarity}: makers differ in which terminal they mark A. */
public final class ConductorsPolarity implements SiteRule {
  private static final String REASON =
      "a unit with the pair the wrong way round is deaf, and disturbs the others";

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "conductors.polarity",
              "The pair is crossed exactly where a device type marks its positive terminal differently from the head unit.",
              Level.ERROR)
          .yieldingTo("head.missing", "head.duplicate");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Unit head = site.head();
    if (head == null || !isKnown(head)) {
      return;
    }
    int known = 0;
    List<Unit> others = new ArrayList<>();
    for (Unit unit : site.units()) {
      if (isKnown(unit)) {
        known++;
        if (isPositiveOnA(unit) != isPositiveOnA(head)) {
          others.add(unit);
        }
      }
    }
    if (head.pair().is(Pair.CROSSED) && others.size() == known - 1 && !others.isEmpty()) {
      context.report(
          context.finding(head.pair().place(), headAlone(head)).fixedBy(fix(head, site)));
    } else {
      others.forEach(unit -> report(unit, head, site, context));
    }
  }

  /** Whether the conductor that is landed on A of a straight unit is the positive one. */
  private static boolean isPositiveOnA(Unit unit) {
    boolean onA = unit.type().positiveTerminal() == Conductor.A;
    return onA != unit.pair().is(Pair.CROSSED);
  }

  private static Message headAlone(Unit head) {
    return new Message(
        "the pair is crossed at the head unit " + head.called() + " and at no unit behind it",
        REASON,
        "land the pair straight, and write pair: straight");
  }

  private static boolean isKnown(Unit unit) {
    return unit.type().isKnown()
        && !unit.type().positiveTerminalSetting().isFaulty()
        && !unit.pair().isFaulty();
  }

  private static void report(Unit unit, Unit head, Site site, RuleContext context) {
    boolean crossed = unit.pair().is(Pair.CROSSED);
    context.report(
        context
            .finding(
                unit.pair().isMissing() ? unit.name().place() : unit.pair().place(),
                new Message(
                    unit.called()
                        + " marks its positive terminal "
                        + unit.type().positiveTerminal().word()
                        + ", the head unit "
                        + head.type().positiveTerminal().word()
                        + ", and the pair is "
                        + (crossed ? "crossed" : "not crossed"),
                    REASON,
                    "land the pair accordingly, and write pair: "
                        + (crossed ? "straight" : "crossed")))
            .fixedBy(fix(unit, site)));
  }

  private static FixDraft fix(Unit unit, Site site) {
    Pair wanted = unit.pair().is(Pair.CROSSED) ? Pair.STRAIGHT : Pair.CROSSED;
    return FixDraft.onSite(
        site.isPlanned(),
        "Land the pair " + wanted.word() + " at " + unit.called(),
        unit.pair().isMissing()
            ? Edit.addKey(unit.place(), "outdoor", "pair", wanted.word())
            : Edit.write(unit.pair().place(), wanted.word()));
  }
}
