package org.headhouse.linter.fault;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.headhouse.linter.fault.Measurement.Quantity;
import org.jspecify.annotations.Nullable;

/** The faults with which some readings can be had, and what would leave fewer. For one thread. */
public final class FaultsLeft {
  /** Up to this many items every place is looked at for what tells two faults apart. */
  private static final int FEW_ITEMS = 12;

  /** How many groups at either end of the list a fault is compared with. */
  private static final int GROUPS_COMPARED = 12;

  private final SegmentFaults segment;
  private final List<Hypothesis> states;
  private final boolean soundLeft;
  private final Map<Fault, List<Hypothesis>> looks = new LinkedHashMap<>();

  FaultsLeft(SegmentFaults segment, List<Hypothesis> states, boolean soundLeft) {
    this.segment = segment;
    this.states = List.copyOf(states);
    this.soundLeft = soundLeft;
    for (Hypothesis state : states) {
      Fault fault = state.fault();
      if (fault != null) {
        looks.computeIfAbsent(fault, any -> new ArrayList<>(2)).add(state);
      }
    }
  }

  /** In the order of the chain. */
  public List<Fault> faults() {
    return List.copyOf(looks.keySet());
  }

  /** Whether the segment may also be as it is written. */
  public boolean isSoundLeft() {
    return soundLeft;
  }

  /**
   * What to measure next.
   *
   * @param near the index of the item that people start from
   * @param taken what was measured already
   * @return null where no measurement tells any two of what is left apart
   */
  public @Nullable Measurement next(int near, Collection<Measurement> taken) {
    List<Hypothesis> all = new ArrayList<>(states);
    if (soundLeft) {
      all.add(segment.sound());
    }
    return new MeasurementChooser(segment.items(), near).next(all, Set.copyOf(taken));
  }

  /** The faults in groups within which no measurement tells any two apart. */
  public List<List<Fault>> groups() {
    List<List<Fault>> groups = new ArrayList<>();
    for (Fault fault : looks.keySet()) {
      List<Fault> group = groupOf(fault, groups);
      if (group == null) {
        groups.add(new ArrayList<>(List.of(fault)));
      } else {
        group.add(fault);
      }
    }
    return groups;
  }

  private @Nullable List<Fault> groupOf(Fault fault, List<List<Fault>> groups) {
    for (int at = 0; at < groups.size(); at++) {
      boolean near = at < GROUPS_COMPARED || at >= groups.size() - GROUPS_COMPARED;
      if (near && groups.get(at).stream().noneMatch(other -> isToldApart(fault, other))) {
        return groups.get(at);
      }
    }
    return null;
  }

  /** Whether some reading cannot be had with both, or cannot be told from one that can. */
  private boolean isToldApart(Fault one, Fault other) {
    for (int item : places(one, other)) {
      for (Quantity quantity : Quantity.values()) {
        if (isToldApart(one, other, new Measurement(quantity, item))) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean isToldApart(Fault one, Fault other, Measurement measurement) {
    for (Hypothesis first : looks.getOrDefault(one, List.of())) {
      Span shown = first.shown(measurement);
      for (Hypothesis second : looks.getOrDefault(other, List.of())) {
        if (second.shown(measurement).meets(shown)) {
          return false;
        }
      }
    }
    return true;
  }

  private Set<Integer> places(Fault one, Fault other) {
    Set<Integer> places = new TreeSet<>();
    int last = segment.items() - 1;
    if (last < FEW_ITEMS) {
      for (int item = 0; item <= last; item++) {
        places.add(item);
      }
      return places;
    }
    places.add(0);
    places.add(last);
    for (Fault fault : List.of(one, other)) {
      for (int item = fault.from() - 1; item <= fault.to() + 1; item++) {
        places.add(Math.max(0, Math.min(last, item)));
      }
    }
    return places;
  }
}
