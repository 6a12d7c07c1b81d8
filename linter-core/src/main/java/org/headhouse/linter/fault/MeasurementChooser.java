package org.headhouse.linter.fault;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.headhouse.linter.fault.Measurement.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * Chooses what to measure next: that which leaves the fewest faults at worst, then the fewest over
 * all that it may show; of equal ones that which needs no opened chain, and the nearest to the head
 * unit.
 */
final class MeasurementChooser {
  /** Up to this many items every place is thought of. */
  private static final int FEW_ITEMS = 12;

  /** Where there are more, this many parts of what the faults are in are ended by a place. */
  private static final int PARTS = 4;

  /** Where more states than this are left on many items, only what needs no tools is thought of. */
  private static final int MANY_STATES = 120;

  private static final Comparator<Band.Left> ORDER =
      Comparator.comparingInt(Band.Left::most).thenComparingInt(Band.Left::sum);

  private final int items;
  private final int near;

  /**
   * @param near the index of the item that people start from
   */
  MeasurementChooser(int items, int near) {
    this.items = items;
    this.near = near;
  }

  /**
   * The next measurement.
   *
   * @param taken those that are known already
   * @return null where none tells any two of the states apart
   */
  @Nullable Measurement next(List<Hypothesis> states, Set<Measurement> taken) {
    int all = Band.faults(states);
    Measurement best = null;
    Band.Left least = new Band.Left(all, 0);
    for (Measurement offered : offered(states)) {
      Band.Left left = taken.contains(offered) ? least : Band.left(states, offered);
      boolean tells = left.most() < all;
      if (tells && (best == null || ORDER.compare(left, least) < 0)) {
        best = offered;
        least = left;
      }
    }
    return best;
  }

  /** Whether any measurement tells any two of some states apart. */
  boolean tellsAny(List<Hypothesis> states) {
    int all = Band.faults(states);
    return offered(states).stream().anyMatch(one -> Band.left(states, one).most() < all);
  }

  /** All that is thought of, what costs the least first. */
  private List<Measurement> offered(List<Hypothesis> states) {
    boolean onlySimple = items > FEW_ITEMS && states.size() > MANY_STATES;
    List<Measurement> offered = new ArrayList<>();
    for (int item : places(states)) {
      for (Quantity quantity : Quantity.values()) {
        if (isOffered(quantity, item) && (!onlySimple || isSimple(quantity))) {
          offered.add(new Measurement(quantity, item));
        }
      }
    }
    offered.sort(
        Comparator.comparing((Measurement one) -> one.quantity().opensChain())
            .thenComparing(one -> Math.abs(one.item() - near))
            .thenComparing(Measurement::quantity));
    return offered;
  }

  private static boolean isSimple(Quantity quantity) {
    return quantity == Quantity.PAIR_RESISTANCE || quantity == Quantity.IDLE_VOLTAGE;
  }

  private boolean isOffered(Quantity quantity, int item) {
    return switch (quantity) {
      case RESISTANCE_TOWARD_HEAD -> item > 0;
      case RESISTANCE_TOWARD_END -> item < items - 1;
      case LOOP_RESISTANCE -> item == near && items > 1;
      default -> true;
    };
  }

  /** Both ends, and with many items some places among those that the faults are at. */
  private Set<Integer> places(List<Hypothesis> states) {
    Set<Integer> places = new TreeSet<>();
    if (items <= FEW_ITEMS) {
      for (int item = 0; item < items; item++) {
        places.add(item);
      }
      return places;
    }
    places.add(near);
    places.add(0);
    places.add(items - 1);
    int[] at =
        states.stream()
            .filter(one -> one.fault() != null)
            .mapToInt(one -> one.fault().from())
            .sorted()
            .toArray();
    for (int part = 0; part <= PARTS && at.length > 0; part++) {
      int place = at[(at.length - 1) * part / PARTS];
      places.add(place);
      if (states.size() <= MANY_STATES) {
        places.add(Math.min(items - 1, place + 1));
      }
    }
    return places;
  }
}
