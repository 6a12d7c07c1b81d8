package org.headhouse.linter.rules.bias;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;

/** {@code bias.several}: MODBUS over Serial Line V1.02 §3.4.6. */
public final class BiasSeveral implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of("bias.several", "A segment has bias at only one place.", Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    List<SegmentLine> segments = context.figures().segments();
    for (SegmentLine line : segments) {
      List<Bias> biases = new ArrayList<>(line.holdingBiases());
      biases.sort(Comparator.comparing(bias -> isAtWrongSide(bias, line, segments)));
      for (Bias other : biases.subList(Math.min(1, biases.size()), biases.size())) {
        String at = "\"" + other.at().or("") + "\"";
        String remove =
            "isolate the supply, remove the resistors at " + at + ", and delete the entry";
        context.report(
            context
                .finding(
                    other.at().place(),
                    new Message(
                        at + " is a second bias point of this segment",
                        "two bias points load the drivers, which have to overcome both",
                        isAtWrongSide(other, line, segments)
                            ? "if they are fitted on its other side, which has none, set side: "
                                + otherSide(other, line).word()
                                + "; otherwise "
                                + remove
                            : remove))
                .related(biases.get(0).at().place().region(), "the first bias point is here"));
      }
    }
  }

  /** Whether the segment behind the repeater at which it is fitted has none. */
  private static boolean isAtWrongSide(Bias bias, SegmentLine line, List<SegmentLine> segments) {
    return segments.stream()
        .anyMatch(
            other ->
                other != line
                    && other.holdingBiases().isEmpty()
                    && other.segment().items().stream().anyMatch(item(bias, line)::isSameItemAs));
  }

  /**
   * The numbers of the items that have a bias in a segment with several: one of them may be meant
   * for the other side of the same item.
   */
  static Set<Integer> itemsOfSeveral(List<SegmentLine> segments) {
    Set<Integer> items = new HashSet<>();
    for (SegmentLine line : segments) {
      List<Bias> biases = line.holdingBiases();
      if (biases.size() > 1) {
        biases.forEach(bias -> items.add(item(bias, line).index()));
      }
    }
    return items;
  }

  private static Side otherSide(Bias bias, SegmentLine line) {
    return line.segment().side(item(bias, line)) == Side.IN ? Side.OUT : Side.IN;
  }

  private static ChainItem item(Bias bias, SegmentLine line) {
    return line.segment().items().get(line.itemOf(bias));
  }
}
