package org.headhouse.linter.rules.conductors;

import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Pair;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** {@code conductors.polarity}: makers differ in which terminal they mark A. */
public final class Polarity implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "conductors.polarity",
          "The pair is crossed exactly where the marks of the terminals ask for it.",
          Level.ERROR);

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
    for (Unit unit : site.units()) {
      boolean known = isKnown(unit) && !unit.pair().isFaulty();
      boolean crossed = unit.pair().is(Pair.CROSSED) != head.pair().is(Pair.CROSSED);
      boolean wanted = unit.type().positiveTerminal() != head.type().positiveTerminal();
      if (known && crossed != wanted) {
        report(unit, head, wanted, context);
      }
    }
  }

  private static boolean isKnown(Unit unit) {
    return unit.type().isKnown() && !unit.type().positiveTerminalSetting().isFaulty();
  }

  private static void report(Unit unit, Unit head, boolean wanted, RuleContext context) {
    String mark = unit.type().positiveTerminal().word();
    String headMark = head.type().positiveTerminal().word();
    boolean write = wanted != head.pair().is(Pair.CROSSED);
    context.report(
        unit.pair().isMissing() ? unit.name().place() : unit.pair().place(),
        new Message(
            unit.called()
                + " marks its positive terminal "
                + mark
                + ", the head unit "
                + headMark
                + ", and the pair is "
                + (wanted ? "not crossed" : "crossed"),
            "a unit with the pair the wrong way round is deaf, and disturbs the others",
            "land the pair accordingly, and write pair: " + (write ? "crossed" : "straight")));
  }
}
