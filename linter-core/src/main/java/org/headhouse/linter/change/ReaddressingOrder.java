package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.ExcludedAddresses;

/**
 * The order in which units on a live line get other addresses, so that no two ever share one.
 *
 * <p>A unit can take an address once the unit that has it got another. Units that wait for each
 * other form a path, which is worked through from its free end, or a cycle, which needs a spare
 * address. Each unit is set once, but for one unit of each cycle, which is set twice: the fewest
 * settings that do.
 */
final class ReaddressingOrder {
  /**
   * A unit that stays on the line.
   *
   * @param place on the chain
   * @param limit the highest address that it can be set to
   * @param head whether it is the head unit
   * @param visitedAnyway whether there is other work at it
   */
  record Seat(int place, int from, int to, int limit, boolean head, boolean visitedAnyway) {}

  /** Why a unit is set. */
  enum Kind {
    FINAL,
    SPARE,
    /** No address is free: it is set while it is off the line. */
    ASIDE,
    /** It comes back with the address that it was set to. */
    BACK
  }

  /** One setting of one unit. */
  record Turn(int place, int from, int to, Kind kind) {}

  /**
   * @param paths may be mixed in any way, as long as each keeps its own order
   * @param cycles done one after the other, so that one spare address is enough
   */
  record Sequences(List<List<Turn>> paths, List<List<Turn>> cycles) {}

  private final Map<Integer, Seat> holders = new HashMap<>();
  private final Set<Integer> taken = new HashSet<>();
  private final Spares spares;

  /**
   * Which addresses are not to be used as spare ones.
   *
   * @param avoided addresses that are used only where no other is free
   * @param keptFree addresses that other equipment on the line may have
   */
  record Spares(Set<Integer> avoided, ExcludedAddresses keptFree) {
    /** Any address will do. */
    static final Spares ANY = new Spares(Set.of(), ExcludedAddresses.NONE);

    Spares {
      avoided = Set.copyOf(avoided);
    }
  }

  private ReaddressingOrder(List<Seat> seats, Set<Integer> held, Spares spares) {
    this.spares = spares;
    this.taken.addAll(held);
    for (Seat seat : seats) {
      holders.put(seat.from(), seat);
      taken.add(seat.to());
    }
  }

  /**
   * @param seats all units that are on the line all the time, with different addresses in either
   *     state
   * @param held addresses of other units on the line, which no unit gets
   */
  static Sequences of(List<Seat> seats, Set<Integer> held, Spares spares) {
    ReaddressingOrder order = new ReaddressingOrder(seats, held, spares);
    List<List<Turn>> paths = new ArrayList<>();
    List<List<Turn>> cycles = new ArrayList<>();
    Set<Seat> done = new HashSet<>();
    for (Seat seat : seats) {
      // The last unit of a path has an address that no other gets.
      if (seat.from() != seat.to() && !order.taken.contains(seat.from())) {
        paths.add(order.path(seat, done));
      }
    }
    for (Seat seat : seats) {
      if (seat.from() != seat.to() && !done.contains(seat)) {
        cycles.add(order.cycle(order.ring(seat, done)));
      }
    }
    return new Sequences(List.copyOf(paths), List.copyOf(cycles));
  }

  private List<Turn> path(Seat start, Set<Seat> done) {
    List<Turn> turns = new ArrayList<>();
    for (Seat seat = start; seat != null; seat = holders.get(seat.to())) {
      done.add(seat);
      turns.add(0, turn(seat));
    }
    return List.copyOf(turns);
  }

  /** The units of a cycle: each takes the address of the next. */
  private List<Seat> ring(Seat start, Set<Seat> done) {
    List<Seat> ring = new ArrayList<>();
    for (Seat seat = start; seat != null && done.add(seat); seat = holders.get(seat.to())) {
      ring.add(seat);
    }
    return ring;
  }

  private List<Turn> cycle(List<Seat> ring) {
    Seat first =
        ring.stream()
            .min(
                Comparator.comparing((Seat seat) -> spare(seat).isEmpty())
                    .thenComparing(Seat::head)
                    .thenComparing(seat -> !seat.visitedAnyway())
                    .thenComparing(Seat::place))
            .orElseThrow();
    Optional<Integer> spare = spare(first);
    List<Turn> turns = new ArrayList<>();
    turns.add(
        spare.isPresent()
            ? new Turn(first.place(), first.from(), spare.get(), Kind.SPARE)
            : new Turn(first.place(), first.from(), first.to(), Kind.ASIDE));
    // Its address is free: the unit that is to get it is next, and so on round the ring.
    int at = ring.indexOf(first);
    for (int back = 1; back < ring.size(); back++) {
      turns.add(turn(ring.get(Math.floorMod(at - back, ring.size()))));
    }
    turns.add(
        spare.isPresent()
            ? new Turn(first.place(), spare.get(), first.to(), Kind.FINAL)
            : new Turn(first.place(), first.to(), first.to(), Kind.BACK));
    return List.copyOf(turns);
  }

  private static Turn turn(Seat seat) {
    return new Turn(seat.place(), seat.from(), seat.to(), Kind.FINAL);
  }

  /**
   * An address that no unit has once the paths are done: not a reserved one where possible, and the
   * next above all that are in use.
   */
  private Optional<Integer> spare(Seat seat) {
    int highestTaken = taken.stream().mapToInt(Integer::intValue).max().orElse(0);
    return BusAddress.SETTABLE
        .addresses()
        .filter(address -> address <= seat.limit())
        .filter(address -> !taken.contains(address) && !spares.keptFree().contains(address))
        .boxed()
        .min(
            Comparator.comparing((Integer address) -> BusAddress.isReserved(address))
                .thenComparing(spares.avoided()::contains)
                .thenComparing(address -> address < highestTaken)
                .thenComparing(Comparator.naturalOrder()));
  }
}
