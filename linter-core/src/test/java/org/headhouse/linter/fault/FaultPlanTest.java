package org.headhouse.linter.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.fault.Measurement.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FaultPlanTest {
  private static final int NO_LIMIT = Integer.MAX_VALUE;

  /** A search through all trees: none is more than one measurement shorter. */
  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4, 5, 6})
  void noTreeIsMoreThanOneMeasurementShorter(int items) {
    SegmentFaults segment = PlainLine.faults(items, items);
    int depth = FaultPlan.of(segment, 0, NO_LIMIT).depth();
    assertThat(new TreeSearch(items).canBeDone(states(segment), depth - 2)).isFalse();
  }

  /**
   * With more items there are too many trees, but none is shorter than what one state alone needs:
   * as many measurements as tell it from every other state that can be told from it.
   */
  @ParameterizedTest
  @ValueSource(ints = {7, 8})
  void noTreeCanBeMoreThanOneMeasurementShorter(int items) {
    SegmentFaults segment = PlainLine.faults(items, items);
    int depth = FaultPlan.of(segment, 0, NO_LIMIT).depth();
    assertThat(LeastDepth.of(segment)).isGreaterThanOrEqualTo(depth - 1);
  }

  /** Whatever a state can show leads to a group that has it. */
  @Test
  void everyWayKeepsTheStatesThatCanTakeIt() {
    SegmentFaults segment = PlainLine.faults(6, 3);
    FaultPlan plan = FaultPlan.of(segment, 0, NO_LIMIT);
    int followed = 0;
    for (Hypothesis state : states(segment)) {
      followed += follow(plan, 0, state);
    }
    assertThat(followed).isGreaterThan(100);
  }

  private static int follow(FaultPlan plan, int step, Hypothesis state) {
    FaultPlan.Step here = plan.steps().get(step);
    Span shown = state.shown(here.measurement());
    int followed = 0;
    for (FaultPlan.Way way : here.ways()) {
      boolean taken = way.limits().low() < shown.high() && shown.low() < way.limits().high();
      if (taken && way.step() >= 0) {
        followed += follow(plan, way.step(), state);
      } else if (taken) {
        FaultPlan.Group group = plan.groups().get(way.group());
        assertThat(state.fault() == null ? group.sound() : group.faults().contains(state.fault()))
            .as("%s in %s after %s", state.fault(), group, here)
            .isTrue();
        followed++;
      }
    }
    return followed;
  }

  @Test
  void aPlanHasNoMoreStepsThanThereIsRoomFor() {
    FaultPlan plan = FaultPlan.of(PlainLine.faults(20, 3), 0, 12);
    assertThat(plan.steps()).hasSize(12);
    assertThat(plan.groups()).anyMatch(FaultPlan.Group::isOpen);
  }

  private static List<Hypothesis> states(SegmentFaults segment) {
    List<Hypothesis> states = new ArrayList<>(segment.hypotheses(List.of()));
    states.add(segment.sound());
    return states;
  }

  /** All trees of measurements, the most promising first, with what was found of each set. */
  private static final class TreeSearch {
    private final List<Measurement> measurements = new ArrayList<>();
    private final Map<Set<Hypothesis>, int[]> known = new HashMap<>();

    TreeSearch(int items) {
      for (int item = 0; item < items; item++) {
        for (Quantity quantity : Quantity.values()) {
          if (quantity != Quantity.LOOP_RESISTANCE || item == 0) {
            measurements.add(new Measurement(quantity, item));
          }
        }
      }
    }

    private record Option(Measurement measurement, Band.Left left) {}

    boolean canBeDone(List<Hypothesis> states, int depth) {
      int[] limits = known.computeIfAbsent(new HashSet<>(states), any -> new int[] {-1, NO_LIMIT});
      if (depth <= limits[0] || depth >= limits[1]) {
        return depth >= limits[1];
      }
      boolean can = search(states, depth);
      limits[can ? 1 : 0] = depth;
      return can;
    }

    private boolean search(List<Hypothesis> states, int depth) {
      int all = Band.faults(states);
      List<Option> options =
          measurements.stream()
              .map(one -> new Option(one, Band.left(states, one)))
              .filter(option -> option.left().most() < all)
              .sorted(Comparator.comparingInt(option -> option.left().most()))
              .toList();
      if (options.isEmpty() || depth <= 0) {
        return options.isEmpty() && depth >= 0;
      }
      return options.stream()
          .anyMatch(
              option ->
                  Band.of(states, option.measurement()).stream()
                      .sorted(Comparator.comparingInt(band -> -band.states().size()))
                      .allMatch(band -> canBeDone(band.states(), depth - 1)));
    }
  }
}
