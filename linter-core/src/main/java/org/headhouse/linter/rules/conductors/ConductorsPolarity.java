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
import org.headhouse.linter.site.DeviceType;
import org.headhouse.linter.site.Pair;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/** {@code conductors.polarity}: makers differ in which terminal they mark A. */
public final class ConductorsPolarity implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "conductors.polarity",
              "The pair is crossed at each item whose type marks its positive terminal differently from the head unit, and at no other.",
              Level.ERROR)
          .yieldingTo("head.missing", "head.duplicate");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Unit unit = site.head();
    if (unit == null) {
      return;
    }
    Terminals head = new Terminals(unit, unit.connection(Side.IN), unit.called());
    if (!isKnown(head)) {
      return;
    }
    int known = 0;
    List<Terminals> others = new ArrayList<>(0);
    for (Terminals terminals : Terminals.of(site)) {
      if (isKnown(terminals)) {
        known++;
        if (isPositiveOnA(terminals) != isPositiveOnA(head)) {
          others.add(terminals);
        }
      }
    }
    if (head.connection().pair().is(Pair.CROSSED)
        && others.size() == known - 1
        && !others.isEmpty()) {
      context.report(
          context.finding(head.connection().pair().place(), headAlone(head)).fixedBy(fix(head)));
    } else {
      others.forEach(terminals -> report(terminals, head, context));
    }
  }

  /** Whether the conductor that is landed on A of a straight item is the positive one. */
  private static boolean isPositiveOnA(Terminals terminals) {
    boolean onA = positive(terminals) == Conductor.A;
    return onA != terminals.connection().pair().is(Pair.CROSSED);
  }

  private static Conductor positive(Terminals terminals) {
    return terminals.item().type().positiveTerminal();
  }

  private static Message headAlone(Terminals head) {
    return new Message(
        "the pair is crossed at the head unit " + head.called() + " and nowhere else",
        reason(head),
        "isolate the supply, connect the pair straight, and set pair: straight");
  }

  private static String reason(Terminals terminals) {
    return (terminals.item() instanceof Unit ? "a unit" : "a device")
        + " with the pair reversed understands nothing, and disturbs the others";
  }

  private static boolean isKnown(Terminals terminals) {
    DeviceType type = terminals.item().type();
    return type.isKnown()
        && !type.positiveTerminalSetting().isFaulty()
        && !terminals.connection().pair().isFaulty();
  }

  private static void report(Terminals terminals, Terminals head, RuleContext context) {
    Setting<Pair> pair = terminals.connection().pair();
    boolean crossed = pair.is(Pair.CROSSED);
    context.report(
        context
            .finding(
                pair.isMissing() ? terminals.item().name().place() : pair.place(),
                new Message(
                    terminals.called()
                        + " marks its positive terminal "
                        + positive(terminals).word()
                        + ", the head unit "
                        + positive(head).word()
                        + ", but the pair is "
                        + (crossed ? "crossed" : "straight"),
                    reason(terminals),
                    "isolate the supply, swap its conductors, and set pair: "
                        + (crossed ? "straight" : "crossed")))
            .about(terminals.called())
            .fixedBy(fix(terminals)));
  }

  private static @Nullable FixDraft fix(Terminals terminals) {
    Setting<Pair> pair = terminals.connection().pair();
    Pair wanted = pair.is(Pair.CROSSED) ? Pair.STRAIGHT : Pair.CROSSED;
    boolean ofOneSide = terminals.item() instanceof Repeater && pair.isMissing();
    return ofOneSide
        ? null
        : FixDraft.onSite(
            "Land the pair " + wanted.word() + " at " + terminals.called(),
            pair.isMissing()
                ? Edit.addKey(terminals.item().place(), after(terminals), "pair", wanted.word())
                : Edit.write(pair.place(), wanted.word()));
  }

  /** The key that the pair of an item is written after. */
  private static String after(Terminals terminals) {
    return terminals.item() instanceof Unit ? "outdoor" : "termination";
  }
}
