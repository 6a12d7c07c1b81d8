package org.headhouse.linter.rules.bias;

import java.util.List;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.Site;

/** {@code bias.several}: MODBUS over Serial Line V1.02 §3.4.6. */
public final class BiasSeveral implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of("bias.several", "A segment is biased at one place.", Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (SegmentLine line : context.figures().segments()) {
      List<Bias> biases = line.holdingBiases();
      for (int i = 1; i < biases.size(); i++) {
        Bias other = biases.get(i);
        context.report(
            context
                .finding(
                    other.at().place(),
                    new Message(
                        "\"" + other.at().or("") + "\" is a second place of bias in one segment",
                        "two of them load the drivers and raise the level that each has to overcome",
                        "remove the resistors at \""
                            + other.at().or("")
                            + "\", and delete the entry"))
                .related(biases.get(0).at().place().region(), "the segment is first biased here"));
      }
    }
  }
}
