package example.nursery.rules;

import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.ParameterType;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** {@code nursery.long-run}: our cable comes on drums of 100 m, and nothing is spliced. */
public final class LongRun implements SiteRule {
  private static final Parameter<Length> DRUM =
      new Parameter<>("drum", "the cable on one drum", ParameterType.length(), "100 m");

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "nursery.long-run", "No run is longer than the cable on a drum.", Level.WARNING, DRUM);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Length drum = context.value(DRUM);
    for (Unit unit : site.units()) {
      Length run = unit.cableToNext().orNull();
      if (run != null && run.metres() > drum.metres()) {
        context.report(
            unit.cableToNext().place(),
            new Message(
                "the run behind " + unit.called() + " is " + run.written(),
                "a drum has "
                    + drum.written()
                    + ", and a splice in the ground fails in its first winter",
                "lead the cable through a box on the way, and write it as a repeater or a unit"));
      }
    }
  }
}
