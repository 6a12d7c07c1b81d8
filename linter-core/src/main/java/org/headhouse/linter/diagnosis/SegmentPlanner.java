package org.headhouse.linter.diagnosis;

import java.util.List;
import org.headhouse.linter.fault.FaultPlan;
import org.headhouse.linter.fault.SegmentFaults;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.stability.Internal;

/** Makes the plan of a segment. */
@Internal
public final class SegmentPlanner {
  private SegmentPlanner() {}

  /**
   * The plan of a segment of a site.
   *
   * @param mostSteps how many steps there is room for
   */
  public static SegmentPlan plan(
      Site site, SegmentLine line, LineFigures figures, SitePolicy policy, int mostSteps) {
    SegmentFaults faults = SegmentDictionary.of(line, figures, policy);
    List<String> items = ItemNames.of(line);
    if (faults == null) {
      return new SegmentPlan(
          items, List.of(), List.of(), List.of(), WhatIsMissing.of(line, figures));
    }
    NamedFaults names = new NamedFaults(line);
    FaultPlan plan = FaultPlan.of(faults, line.measuredAt(), mostSteps);
    return new SegmentPlan(
        items,
        plan.steps().stream().map(step -> step(step, names, site)).toList(),
        plan.groups().stream().map(group -> group(group, names)).toList(),
        faults.unseen().stream().map(names::named).toList(),
        null);
  }

  private static SegmentPlan.Step step(FaultPlan.Step step, NamedFaults names, Site site) {
    return new SegmentPlan.Step(
        names.next(step.measurement(), site),
        step.ways().stream()
            .map(
                way ->
                    new SegmentPlan.Way(
                        way.limits().low(), way.limits().high(), way.step(), way.group()))
            .toList());
  }

  private static SegmentPlan.Group group(FaultPlan.Group group, NamedFaults names) {
    return new SegmentPlan.Group(
        group.faults().stream().map(names::named).toList(), group.sound(), group.isOpen());
  }
}
