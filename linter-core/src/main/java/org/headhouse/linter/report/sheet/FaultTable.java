package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.headhouse.linter.diagnosis.NamedFault;
import org.headhouse.linter.diagnosis.NextMeasurement;
import org.headhouse.linter.diagnosis.SegmentPlan;
import org.headhouse.linter.diagnosis.SegmentPlanner;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.report.FaultWords;

/**
 * What to measure on a segment that does not work, as a table that is followed by hand.
 *
 * @param title the ends of the segment
 * @param note why there is no table; empty where there is one
 * @param steps the first is where to begin
 * @param groups what can be left at the end
 * @param unseen faults that no measurement is sure to show; empty where there are none
 */
record FaultTable(
    String title, String note, List<Step> steps, List<Group> groups, List<String> unseen) {

  /** A segment of more items has a table that nobody follows. */
  private static final int MOST_ITEMS = 40;

  /** A table of more steps is not followed by hand. */
  private static final int MOST_STEPS = 30;

  FaultTable {
    steps = List.copyOf(steps);
    groups = List.copyOf(groups);
    unseen = List.copyOf(unseen);
  }

  /**
   * One measurement.
   *
   * @param state what has to be switched off or on
   */
  record Step(String number, String state, String measure, List<Way> ways) {
    Step {
      ways = List.copyOf(ways);
    }
  }

  /** What a reading is in, and how to go on. */
  record Way(String reading, String onward) {}

  /** What can be left at the end. */
  record Group(String letter, List<String> faults) {
    Group {
      faults = List.copyOf(faults);
    }
  }

  static List<FaultTable> of(SiteFacts facts, SheetSettings settings) {
    return facts.figures().segments().stream().map(line -> of(line, facts, settings)).toList();
  }

  private static FaultTable of(SegmentLine line, SiteFacts facts, SheetSettings settings) {
    int size = line.segment().items().size();
    if (size > MOST_ITEMS) {
      return without(
          title(line.segment().items().stream().map(item -> PlainText.name(item)).toList()),
          size + " items are too many to follow by hand: put readings into the goal diagnose.");
    }
    return of(
        SegmentPlanner.plan(facts.site(), line, facts.figures(), settings.policy(), MOST_STEPS));
  }

  private static FaultTable without(String title, String note) {
    return new FaultTable(title, note, List.of(), List.of(), List.of());
  }

  private static String title(List<String> items) {
    return PlainText.name(items.get(0)) + " to " + PlainText.name(items.get(items.size() - 1));
  }

  private static FaultTable of(SegmentPlan plan) {
    String title = title(plan.items());
    if (plan.notJudged() != null) {
      return without(title, "There is no table: " + PlainText.sentence(plan.notJudged()) + ".");
    }
    List<Step> steps = new ArrayList<>();
    for (SegmentPlan.Step step : plan.steps()) {
      steps.add(
          new Step(
              String.valueOf(steps.size() + 1),
              isOff(step) ? "Supplies off, locked" : "Supplies on, nobody sends",
              FaultWords.of(shown(step.measurement())),
              step.ways().stream().map(way -> way(way, isOff(step))).toList()));
    }
    List<Group> groups = new ArrayList<>();
    for (SegmentPlan.Group group : plan.groups()) {
      groups.add(new Group(letter(groups.size()), faults(group)));
    }
    return new FaultTable(title, "", steps, groups, FaultWords.merged(shown(plan.unseen())));
  }

  private static List<NamedFault> shown(List<NamedFault> faults) {
    return faults.stream()
        .map(
            one ->
                new NamedFault(
                    one.fault(),
                    one.at().stream().map(PlainText::name).toList(),
                    one.side(),
                    one.conductors()))
        .toList();
  }

  private static NextMeasurement shown(NextMeasurement one) {
    return new NextMeasurement(one.reading(), PlainText.name(one.at()), one.side(), one.toward());
  }

  private static boolean isOff(SegmentPlan.Step step) {
    return step.measurement().reading().endsWith("resistance");
  }

  private static Way way(SegmentPlan.Way way, boolean ohms) {
    return new Way(
        reading(way, ohms),
        way.step() >= 0 ? "step " + (way.step() + 1) : "group " + letter(way.group()));
  }

  private static String reading(SegmentPlan.Way way, boolean ohms) {
    if (Double.isInfinite(way.above())) {
      return Double.isInfinite(way.upTo()) ? "anything" : "up to " + limit(way.upTo(), ohms);
    }
    return Double.isInfinite(way.upTo())
        ? "over " + limit(way.above(), ohms)
        : limit(way.above(), ohms) + " to " + limit(way.upTo(), ohms);
  }

  /** As many digits as keep neighbouring limits apart; a meter shows no more. */
  private static String limit(double value, boolean ohms) {
    String unit = ohms ? Math.abs(value) >= 1e4 ? " kohm" : " ohm" : " V";
    double shown = ohms && Math.abs(value) >= 1e4 ? value / 1e3 : value;
    String digits = String.format(Locale.ROOT, ohms ? "%.2f" : "%.4f", shown);
    String shortest = digits.replaceFirst("\\.?0+$", "");
    return (shortest.equals("-0") ? "0" : shortest) + unit;
  }

  private static List<String> faults(SegmentPlan.Group group) {
    List<String> faults = new ArrayList<>();
    if (group.sound()) {
      faults.add("the line is as written, as far as a meter shows");
    }
    faults.addAll(FaultWords.merged(shown(group.faults())));
    if (group.isOpen()) {
      faults.add("more measurements leave fewer: put the readings into the goal diagnose");
    }
    return faults;
  }

  /** A to Z, then AA and so on. */
  private static String letter(int index) {
    String last = String.valueOf((char) ('A' + index % 26));
    return index < 26 ? last : letter(index / 26 - 1) + last;
  }
}
