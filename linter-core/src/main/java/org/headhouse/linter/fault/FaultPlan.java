package org.headhouse.linter.fault;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which measurement to take, and how to go on by what it shows, until the faults that are left
 * cannot be told apart. Steps that are reached in several ways stand once.
 *
 * @param steps the first one is where to begin; empty where no measurement tells anything
 * @param groups what can be left at the end
 */
public record FaultPlan(List<Step> steps, List<Group> groups) {

  public FaultPlan {
    steps = List.copyOf(steps);
    groups = List.copyOf(groups);
  }

  /**
   * One measurement.
   *
   * @param ways from the lowest readings to the highest
   */
  public record Step(Measurement measurement, List<Way> ways) {
    public Step {
      ways = List.copyOf(ways);
    }

    /** The way that a reading leads; one that is at a limit may take either. */
    public Way way(double reading) {
      for (Way way : ways) {
        if (reading <= way.limits().high()) {
          return way;
        }
      }
      return ways.get(ways.size() - 1);
    }
  }

  /**
   * How to go on.
   *
   * @param limits the readings that lead here
   * @param step the index of the next step, or -1 at the end
   * @param group the index of what is left at the end, or -1 before
   */
  public record Way(Span limits, int step, int group) {}

  /**
   * What is left.
   *
   * @param faults in the order of the chain
   * @param sound whether the segment may also be as it is written
   * @param isOpen whether another measurement would leave fewer, for which the plan has no room
   */
  public record Group(List<Fault> faults, boolean sound, boolean isOpen) {
    public Group {
      faults = List.copyOf(faults);
    }
  }

  /**
   * Makes the plan of a segment.
   *
   * @param near the index of the item that people start from
   * @param mostSteps how many steps there is room for
   */
  public static FaultPlan of(SegmentFaults segment, int near, int mostSteps) {
    List<Hypothesis> all = new ArrayList<>();
    all.add(segment.sound());
    all.addAll(segment.hypotheses(List.of()));
    return new PlanMaker(new MeasurementChooser(segment.items(), near), mostSteps).plan(all);
  }

  /** How many measurements it takes at most. */
  public int depth() {
    return steps.isEmpty() ? 0 : depth(0, new HashMap<>());
  }

  private int depth(int step, Map<Integer, Integer> known) {
    Integer before = known.get(step);
    if (before != null) {
      return before;
    }
    int deepest = 0;
    for (Way way : steps.get(step).ways()) {
      deepest = Math.max(deepest, way.step() < 0 ? 0 : depth(way.step(), known));
    }
    known.put(step, deepest + 1);
    return deepest + 1;
  }
}
