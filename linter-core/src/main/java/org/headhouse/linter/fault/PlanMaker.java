package org.headhouse.linter.fault;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Set;
import org.headhouse.linter.fault.FaultPlan.Group;
import org.headhouse.linter.fault.FaultPlan.Step;
import org.headhouse.linter.fault.FaultPlan.Way;

/** Makes one plan, the first measurements first, so that what there is no room for comes last. */
final class PlanMaker {
  private final MeasurementChooser chooser;
  private final int mostSteps;
  private final List<Draft> drafts = new ArrayList<>();
  private final Queue<Draft> open = new ArrayDeque<>();
  private final Map<Set<Hypothesis>, Integer> stepOf = new HashMap<>();
  private final List<Group> groups = new ArrayList<>();
  private final Map<Group, Integer> groupOf = new HashMap<>();

  PlanMaker(MeasurementChooser chooser, int mostSteps) {
    this.chooser = chooser;
    this.mostSteps = mostSteps;
  }

  private record Draft(List<Hypothesis> states, Measurement measurement, List<Way> ways) {}

  FaultPlan plan(List<Hypothesis> all) {
    way(Span.ANY, all);
    for (Draft draft = open.poll(); draft != null; draft = open.poll()) {
      for (Band band : Band.of(draft.states(), draft.measurement())) {
        draft.ways().add(way(band.limits(), band.states()));
      }
    }
    return new FaultPlan(
        drafts.stream().map(draft -> new Step(draft.measurement(), draft.ways())).toList(), groups);
  }

  private Way way(Span limits, List<Hypothesis> states) {
    Set<Hypothesis> key = new HashSet<>(states);
    Integer known = stepOf.get(key);
    if (known != null) {
      return new Way(limits, known, -1);
    }
    if (drafts.size() == mostSteps) {
      return new Way(limits, -1, group(states, chooser.tellsAny(states)));
    }
    Measurement next = chooser.next(states, Set.of());
    if (next == null) {
      return new Way(limits, -1, group(states, false));
    }
    Draft draft = new Draft(states, next, new ArrayList<>());
    stepOf.put(key, drafts.size());
    drafts.add(draft);
    open.add(draft);
    return new Way(limits, drafts.size() - 1, -1);
  }

  private int group(List<Hypothesis> states, boolean isOpen) {
    Set<Fault> faults = new LinkedHashSet<>();
    boolean sound = false;
    for (Hypothesis state : states) {
      Fault fault = state.fault();
      if (fault == null) {
        sound = true;
      } else {
        faults.add(fault);
      }
    }
    Group group = new Group(List.copyOf(faults), sound, isOpen);
    Integer known = groupOf.get(group);
    if (known != null) {
      return known;
    }
    groupOf.put(group, groups.size());
    groups.add(group);
    return groups.size() - 1;
  }
}
