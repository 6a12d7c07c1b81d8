package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.headhouse.linter.RandomCases;
import org.headhouse.linter.change.ReaddressingOrder.Kind;
import org.headhouse.linter.change.ReaddressingOrder.Seat;
import org.headhouse.linter.change.ReaddressingOrder.Turn;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Plays the turns on a line of units. Each server address must be unique on the bus (Modbus over
 * Serial Line V1.02, 2.2), so at no moment may two units hold one.
 */
class ReaddressingOrderTest {

  /**
   * Every way in which units can get other addresses out of a pool, against the fewest settings
   * that a search through all states of the line finds. The pool has addresses to spare, so that
   * whole permutations, and units that take free addresses, are all among them.
   */
  @ParameterizedTest
  @CsvSource({"1, 3", "2, 4", "3, 5", "4, 6", "5, 6"})
  void noOrderHasFewerSettings(int units, int pool) {
    assertFewestSettings(units, pool);
  }

  @Tag("long")
  @ParameterizedTest
  @CsvSource({"5, 7", "6, 8", "7, 8"})
  void noOrderOfMoreUnitsHasFewerSettings(int units, int pool) {
    assertFewestSettings(units, pool);
  }

  private static void assertFewestSettings(int units, int pool) {
    int[] start = IntStream.rangeClosed(1, units).toArray();
    Map<Integer, Integer> fewest = fewestSettings(start, pool);
    assertThat(fewest).hasSize(arrangements(units, pool));
    fewest.forEach(
        (state, settings) -> {
          int[] target = addresses(state, units);
          List<Turn> turns = turns(seats(start, target, 255), Set.of());
          play(start, target, Set.of(), turns);
          assertThat(turns).as("to %s", Arrays.toString(target)).hasSize(settings);
          assertThat(turns).hasSize(moves(start, target) + cycles(start, target));
        });
  }

  private static int arrangements(int units, int pool) {
    return IntStream.rangeClosed(pool - units + 1, pool).reduce(1, (one, other) -> one * other);
  }

  /**
   * How many settings lead to each state, by breadth-first search; a setting needs a free address.
   */
  private static Map<Integer, Integer> fewestSettings(int[] start, int pool) {
    Map<Integer, Integer> fewest = new HashMap<>();
    Deque<Integer> queue = new ArrayDeque<>(List.of(state(start)));
    fewest.put(state(start), 0);
    while (!queue.isEmpty()) {
      int at = queue.remove();
      int settings = fewest.getOrDefault(at, 0) + 1;
      int[] addresses = addresses(at, start.length);
      for (int unit = 0; unit < addresses.length; unit++) {
        for (int address = 1; address <= pool; address++) {
          int free = address;
          if (Arrays.stream(addresses).noneMatch(held -> held == free)) {
            int[] next = addresses.clone();
            next[unit] = address;
            if (fewest.putIfAbsent(state(next), settings) == null) {
              queue.add(state(next));
            }
          }
        }
      }
    }
    return fewest;
  }

  private static int state(int[] addresses) {
    return Arrays.stream(addresses).reduce(0, (state, address) -> state * 16 + address);
  }

  private static int[] addresses(int state, int units) {
    return IntStream.range(0, units).map(i -> (state >>> (4 * (units - 1 - i))) & 15).toArray();
  }

  /** Any number of units, with addresses freed by others, taken by others, and left as they are. */
  @ParameterizedTest
  @ValueSource(ints = {2, 3, 8, 20})
  void linesAreSafeAndTheirOrderIsShort(int most) {
    assertSafeAndShort(most);
  }

  @Tag("long")
  @ParameterizedTest
  @ValueSource(ints = {40, 120, 200, 247, 254})
  void longLinesAreSafeAndTheirOrderIsShort(int most) {
    assertSafeAndShort(most);
  }

  private static void assertSafeAndShort(int most) {
    RandomCases.each(
        200,
        random -> {
          int units = 1 + random.nextInt(most);
          int pool = Math.min(255, units + random.nextInt(256 - units));
          int[] from = some(random, units, pool);
          int[] to = random.nextInt(3) == 0 ? shuffled(random, from) : some(random, units, pool);
          Set<Integer> held = held(random, from, to);
          boolean spare = taken(to, held) < 255;
          List<Turn> turns = turns(seats(from, to, 255), held);
          play(from, to, held, turns);
          assertThat(turns).hasSize(moves(from, to) + cycles(from, to));
          assertThat(turns.stream().anyMatch(turn -> turn.kind() == Kind.ASIDE))
              .isEqualTo(!spare && cycles(from, to) > 0);
        });
  }

  private static long taken(int[] to, Set<Integer> held) {
    return Arrays.stream(to).count() + held.size();
  }

  private static int[] some(Random random, int number, int pool) {
    List<Integer> all = new ArrayList<>(IntStream.rangeClosed(1, pool).boxed().toList());
    Collections.shuffle(all, random);
    return all.subList(0, number).stream().mapToInt(Integer::intValue).toArray();
  }

  private static int[] shuffled(Random random, int[] addresses) {
    List<Integer> all = new ArrayList<>(Arrays.stream(addresses).boxed().toList());
    Collections.shuffle(all, random);
    return all.stream().mapToInt(Integer::intValue).toArray();
  }

  private static Set<Integer> held(Random random, int[] from, int[] to) {
    Set<Integer> held = new HashSet<>();
    for (int address = 1; address <= 255; address++) {
      int one = address;
      if (random.nextInt(4) == 0
          && Arrays.stream(from).noneMatch(a -> a == one)
          && Arrays.stream(to).noneMatch(a -> a == one)) {
        held.add(one);
      }
    }
    return held;
  }

  /** All 255 addresses are in use: a unit of each cycle is set while it is off the line. */
  @Test
  void aFullLineIsSafeToo() {
    int[] from = IntStream.rangeClosed(1, 255).toArray();
    RandomCases.each(
        5,
        random -> {
          int[] to = shuffled(random, from);
          List<Turn> turns = turns(seats(from, to, 255), Set.of());
          play(from, to, Set.of(), turns);
          assertThat(turns.stream().filter(turn -> turn.kind() == Kind.ASIDE))
              .hasSize(cycles(from, to));
          assertThat(turns.stream().filter(turn -> turn.kind() != Kind.BACK))
              .hasSize(moves(from, to));
        });
  }

  /** No unit is set to an address that its type cannot have. */
  @Tag("long")
  @ParameterizedTest
  @ValueSource(ints = {63, 127, 247})
  void limitsOfTypesAreKept(int limit) {
    RandomCases.each(
        100,
        random -> {
          int[] from = some(random, limit - 1, limit);
          int[] to = shuffled(random, from);
          List<Turn> turns = turns(seats(from, to, limit), Set.of());
          play(from, to, Set.of(), turns);
          assertThat(turns).allSatisfy(turn -> assertThat(turn.to()).isBetween(1, limit));
          assertThat(turns).extracting(Turn::kind).doesNotContain(Kind.ASIDE);
        });
  }

  /** One spare address does for all cycles, and it is one of the standard's where one is free. */
  @ParameterizedTest
  @CsvSource({"4, 5", "10, 11", "246, 247", "248, 249"})
  void allCyclesShareOneSpareAddress(int units, int spare) {
    int[] from = IntStream.rangeClosed(1, units).toArray();
    int[] to = IntStream.rangeClosed(1, units).map(a -> a % 2 == 0 ? a - 1 : a + 1).toArray();
    List<Turn> turns = turns(seats(from, to, 255), Set.of());
    play(from, to, Set.of(), turns);
    assertThat(turns.stream().filter(turn -> turn.kind() == Kind.SPARE).map(Turn::to))
        .hasSize(units / 2)
        .containsOnly(spare);
  }

  /** The unit with the spare address is one that is visited anyway, and not the head unit. */
  @ParameterizedTest
  @CsvSource({"-1, 1", "0, 1", "1, 1", "2, 2"})
  void theUnitThatMovesTwiceIsVisitedAnyway(int visited, int chosen) {
    List<Seat> seats =
        IntStream.range(0, 3)
            .mapToObj(i -> new Seat(i, i + 1, (i + 1) % 3 + 1, 247, i == 0, i == visited))
            .toList();
    List<Turn> turns = turns(seats, Set.of());
    assertThat(turns.get(0)).isEqualTo(new Turn(chosen, chosen + 1, 4, Kind.SPARE));
    assertThat(turns).hasSize(4);
  }

  private static List<Seat> seats(int[] from, int[] to, int limit) {
    return IntStream.range(0, from.length)
        .mapToObj(i -> new Seat(i, from[i], to[i], limit, i == 0, false))
        .toList();
  }

  private static List<Turn> turns(List<Seat> seats, Set<Integer> held) {
    ReaddressingOrder.Sequences sequences =
        ReaddressingOrder.of(seats, held, ReaddressingOrder.Spares.ANY);
    List<Turn> turns = new ArrayList<>(VisitOrder.along(sequences.paths(), Turn::place));
    sequences.cycles().forEach(turns::addAll);
    return turns;
  }

  /** Plays the turns; at no moment do two units on the line hold one address. */
  private static void play(int[] from, int[] to, Set<Integer> held, List<Turn> turns) {
    Map<Integer, Integer> line = new HashMap<>(); // address to unit
    held.forEach(address -> line.put(address, -1));
    for (int unit = 0; unit < from.length; unit++) {
      assertThat(line.put(from[unit], unit)).isNull();
    }
    Integer aside = null;
    for (Turn turn : turns) {
      if (turn.kind() == Kind.BACK) {
        assertThat(aside).isEqualTo(turn.place());
        aside = null;
      } else {
        assertThat(turn.from()).isNotEqualTo(turn.to());
        assertThat(line.remove(turn.from())).as("holder before %s", turn).isEqualTo(turn.place());
      }
      if (turn.kind() == Kind.ASIDE) {
        assertThat(aside).isNull();
        aside = turn.place();
      } else {
        assertThat(line.put(turn.to(), turn.place())).as("holder of %s", turn).isNull();
      }
    }
    assertThat(aside).isNull();
    for (int unit = 0; unit < from.length; unit++) {
      assertThat(line).containsEntry(to[unit], unit);
    }
    assertThat(line).hasSize(from.length + held.size());
  }

  private static int moves(int[] from, int[] to) {
    return (int) IntStream.range(0, from.length).filter(i -> from[i] != to[i]).count();
  }

  /** The cycles of a permutation, counted from the definition: unit to holder of its address. */
  private static int cycles(int[] from, int[] to) {
    int cycles = 0;
    boolean[] seen = new boolean[from.length];
    for (int start = 0; start < from.length; start++) {
      int at = start;
      List<Integer> path = new ArrayList<>();
      while (at >= 0 && !seen[at] && !path.contains(at)) {
        path.add(at);
        at = indexOf(from, to[at]);
      }
      if (at >= 0 && path.contains(at) && from[at] != to[at]) {
        cycles++;
      }
      path.forEach(unit -> seen[unit] = true);
    }
    return cycles;
  }

  private static int indexOf(int[] values, int value) {
    return IntStream.range(0, values.length).filter(i -> values[i] == value).findFirst().orElse(-1);
  }
}
