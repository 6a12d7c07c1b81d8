package org.headhouse.linter.diagnosis;

import java.util.List;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * What to measure on a segment that does not work, and how to go on by what the meter shows.
 *
 * @param items the names in the order of the chain
 * @param steps the first is where to begin; empty where the plan cannot be made
 * @param groups what can be left at the end
 * @param unseen faults that no measurement is sure to show
 * @param notJudged why there is no plan; null where there is one
 */
public record SegmentPlan(
    List<String> items,
    List<Step> steps,
    List<Group> groups,
    List<NamedFault> unseen,
    @Nullable String notJudged) {

  @Internal
  public SegmentPlan {
    items = List.copyOf(items);
    steps = List.copyOf(steps);
    groups = List.copyOf(groups);
    unseen = List.copyOf(unseen);
  }

  /**
   * One measurement.
   *
   * @param ways from the lowest readings to the highest
   */
  public record Step(NextMeasurement measurement, List<Way> ways) {
    public Step {
      ways = List.copyOf(ways);
    }
  }

  /**
   * How to go on.
   *
   * @param above readings over this lead here, in ohms or volts; may be minus infinity
   * @param upTo readings up to this lead here; may be infinity
   * @param step the index of the next step, or -1 at the end
   * @param group the index of what is left at the end, or -1 before
   */
  public record Way(double above, double upTo, int step, int group) {}

  /**
   * What is left at the end.
   *
   * @param sound whether the segment may also be as it is written
   * @param isOpen whether another measurement would leave fewer faults
   */
  public record Group(List<NamedFault> faults, boolean sound, boolean isOpen) {
    public Group {
      faults = List.copyOf(faults);
    }
  }
}
