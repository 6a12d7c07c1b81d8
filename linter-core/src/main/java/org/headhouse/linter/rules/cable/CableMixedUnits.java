package org.headhouse.linter.rules.cable;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.SiteMeasure;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.ParameterType;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;

/**
 * {@code cable.mixed-units}: common practice, no source. Reported once, at the first length that is
 * not in the unit of most.
 */
public final class CableMixedUnits implements SiteRule {
  private static final Parameter<Integer> FEWEST =
      new Parameter<>(
          "fewest",
          "how many lengths a file has at least for this rule; a short file shows both units"
              + " at once",
          ParameterType.within(ParameterType.count(), Integer::doubleValue, "2", "500"),
          "8");

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "cable.mixed-units",
          "The lengths of a site are all in metres or all in feet.",
          Level.NOTE,
          FEWEST);

  private record Written(ChainItem item, Setting<Length> length) {}

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    List<Written> all = new ArrayList<>();
    for (ChainItem item : site.items()) {
      SiteMeasure.lengthsAt(item).forEach(length -> all.add(new Written(item, length)));
    }
    Measure most = SiteMeasure.of(all.stream().map(Written::length).toList());
    List<Written> others = all.stream().filter(one -> !SiteMeasure.is(one.length(), most)).toList();
    if (!others.isEmpty() && all.size() >= context.value(FEWEST)) {
      context.report(finding(others, all.size(), most, context));
    }
  }

  private static Finding finding(List<Written> others, int all, Measure most, RuleContext context) {
    String unit = most == Measure.US ? "feet" : "metres";
    String other = most == Measure.US ? "metres" : "feet";
    return context
        .finding(
            others.get(0).length().place(),
            new Message(
                others.size()
                    + " of "
                    + all
                    + " lengths "
                    + (others.size() == 1 ? "is" : "are")
                    + " in "
                    + other
                    + ", the others in "
                    + unit,
                "a length in the wrong unit makes a run more than three times too long or too"
                    + " short, and every figure with it",
                "check "
                    + (others.size() == 1 ? "it" : "them")
                    + " against the marks on the cable or the drawing, and write all lengths in "
                    + unit))
        .aboutItems(ChainItem.names(others.stream().map(Written::item).toList()));
  }
}
