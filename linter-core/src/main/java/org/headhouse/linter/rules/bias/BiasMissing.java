package org.headhouse.linter.rules.bias;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.IdleBias;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Segment;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;

/** {@code bias.missing}: MODBUS over Serial Line V1.02 §3.4.6. */
public final class BiasMissing implements SiteRule {
  private static final int MOST_NAMED = 3;

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "bias.missing",
              "A segment has bias, unless all its receivers read an undriven pair as idle.",
              Level.ERROR)
          .yieldingTo("reference.unknown", "bias.several");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    LineSettings line = site.line().orNull();
    if (line == null) {
      return;
    }
    Set<Integer> doubtful = null;
    for (SegmentLine segment : context.figures().segments()) {
      if (segment.holdingBiases().isEmpty()
          && segment.segment().items().size() > 1
          && context.figures().knowsPlacesOfBias()) {
        doubtful =
            doubtful == null ? BiasSeveral.itemsOfSeveral(context.figures().segments()) : doubtful;
        if (!hasOneOf(doubtful, segment)) {
          check(segment, line, context);
        }
      }
    }
  }

  private static boolean hasOneOf(Set<Integer> items, SegmentLine segment) {
    return !items.isEmpty()
        && segment.segment().items().stream().anyMatch(item -> items.contains(item.index()));
  }

  private static void check(SegmentLine line, LineSettings settings, RuleContext context) {
    Segment segment = line.segment();
    List<ChainItem> needing = new ArrayList<>(0);
    List<ChainItem> unknown = new ArrayList<>(0);
    for (ChainItem item : segment.items()) {
      Setting<IdleBias> need = item.idleBias(segment.side(item));
      if (need.is(IdleBias.NEEDED)) {
        needing.add(item);
      } else if (need.isMissing() && !isOfUnknownType(item, context)) {
        unknown.add(item);
      }
    }
    boolean conducts =
        line.steadyTerminator(segment.first()) != null
            || line.steadyTerminator(segment.last()) != null;
    if (!needing.isEmpty()) {
      report(needing, true, line, settings, context);
    } else if (conducts && !unknown.isEmpty()) {
      report(unknown, false, line, settings, context);
    }
  }

  /** Then its type is reported, and may say that it needs none. */
  private static boolean isOfUnknownType(ChainItem item, RuleContext context) {
    return context.deviceTypes().source() != null
        && (item.deviceType().isFaulty() || item.deviceType().isGiven())
        && !item.type().isKnown();
  }

  private static void report(
      List<ChainItem> items,
      boolean needed,
      SegmentLine line,
      LineSettings settings,
      RuleContext context) {
    NewBias bias = NewBias.of(line, settings, context.sitePolicy().wantedIdleVolts());
    String where =
        "the segment from "
            + line.segment().first().called()
            + " to "
            + line.segment().last().called();
    FixDraft fix = needed ? bias.fix() : null;
    context.report(
        context
            .finding(
                items.get(0).name().place(),
                new Message(
                    where
                        + (line.biases().isEmpty() ? " has no bias" : " has only pulls over 2 kohm")
                        + (needed
                            ? ", but "
                                + named(items)
                                + (items.size() == 1 ? " needs it" : " need it")
                            : "; it is not known whether "
                                + named(items)
                                + (items.size() == 1 ? " needs it" : " need it")),
                    "while the line is idle, a receiver may take noise for the start of a message",
                    needed
                        ? bias.words()
                        : "check the manuals, and set "
                            + forms(items, line.segment())
                            + " for every receiver that reads an undriven pair as idle; otherwise "
                            + bias.words()))
            .at(needed ? Level.ERROR : Level.WARNING)
            .aboutItems(ChainItem.names(items))
            .fixedBy(fix));
  }

  /** The key that says that an item needs none; a repeater says it of each side. */
  private static String forms(List<ChainItem> items, Segment segment) {
    Set<String> forms = new TreeSet<>(Comparator.reverseOrder());
    for (ChainItem item : items) {
      forms.add(
          item instanceof Repeater
              ? "idle-bias: {" + segment.side(item).word() + ": not-needed}"
              : "idle-bias: not-needed");
    }
    return String.join(" or ", forms);
  }

  private static String named(List<ChainItem> items) {
    String first =
        items.stream().limit(MOST_NAMED).map(ChainItem::called).collect(Collectors.joining(", "));
    int others = items.size() - MOST_NAMED;
    return others > 0 ? first + " and " + others + (others == 1 ? " other" : " others") : first;
  }
}
