package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.change.ReaddressingOrder.Kind;
import org.headhouse.linter.change.ReaddressingOrder.Seat;
import org.headhouse.linter.change.ReaddressingOrder.Turn;
import org.headhouse.linter.site.ExcludedAddresses;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Two units change their addresses with each other, by way of a spare one. MODBUS over Serial Line
 * V1.02 §2.2 has addresses of servers from 1 to 247.
 */
class SpareAddressTest {

  /** The two, what others hold, what is better not used, the limit of the type. */
  @ParameterizedTest
  @CsvSource({
    "1 2,     '',      '',    247, 3",
    "2 3,     '',      '',    247, 4",
    "2 3,     4,       '',    247, 5",
    "2 3,     '',      4,     247, 5",
    "2 3,     '',      4 5,   247, 6",
    "2 3,     9,       '',    247, 10",
    // Where nothing above is free: the lowest.
    "2 3,     '',      '',    3,   1",
    "246 247, '',      '',    247, 1",
    "246 247, '',      1,     247, 2",
    // Rather one that somebody is to have than one that the standard keeps for itself.
    "246 247, '',      '',    255, 1",
    "2 3,     4-247,   '',    255, 1",
    "2 3,     1 4-246, 247,   255, 247",
    "2 3,     1 4-247, '',    255, 248",
    "2 3,     1 4-248, '',    255, 249",
    "2 3,     1 4-254, '',    255, 255",
  })
  void theSpareAddress(String two, String held, String avoided, int limit, int spare) {
    List<Integer> pair = new ArrayList<>(numbers(two));
    pair.sort(null);
    Turn first =
        turns(
                List.of(
                    new Seat(0, pair.get(0), pair.get(1), limit, false, false),
                    new Seat(1, pair.get(1), pair.get(0), limit, false, false)),
                numbers(held),
                numbers(avoided))
            .get(0);
    assertThat(first).isEqualTo(new Turn(0, pair.get(0), spare, Kind.SPARE));
  }

  private static Set<Integer> numbers(String text) {
    Set<Integer> numbers = new HashSet<>();
    for (String part : text.split(" ", -1)) {
      int[] ends =
          Arrays.stream(part.split("-", -1))
              .filter(end -> !end.isEmpty())
              .mapToInt(Integer::parseInt)
              .toArray();
      for (int i = 0; ends.length > 0 && i <= ends[ends.length - 1] - ends[0]; i++) {
        numbers.add(ends[0] + i);
      }
    }
    return numbers;
  }

  private static List<Turn> turns(List<Seat> seats, Set<Integer> held, Set<Integer> avoided) {
    List<List<Turn>> cycles =
        ReaddressingOrder.of(
                seats, held, new ReaddressingOrder.Spares(avoided, ExcludedAddresses.NONE))
            .cycles();
    assertThat(cycles).hasSize(1);
    return cycles.get(0);
  }

  /** Limit, head and visit of the first unit and of the second, and which of them moves twice. */
  @ParameterizedTest
  @CsvSource({
    "247 - -,     247 - -,     0",
    "247 - visit, 247 - -,     0",
    "247 - -,     247 - visit, 1",
    "247 head -,  247 - -,     1",
    "247 head visit, 247 - -,  1",
    // Only one of the two can be set to a spare address.
    "2 - visit,   247 - -,     1",
    "2 - -,       247 head -,  1",
    "247 head -,  2 - visit,   0",
  })
  void theUnitThatMovesTwice(String first, String second, int chosen) {
    List<Turn> turns =
        turns(List.of(seat(0, 1, 2, first), seat(1, 2, 1, second)), Set.of(), Set.of());
    assertThat(turns.get(0)).isEqualTo(new Turn(chosen, chosen + 1, 3, Kind.SPARE));
    assertThat(turns).hasSize(3);
  }

  private static Seat seat(int place, int from, int to, String unit) {
    String[] part = unit.split(" ", -1);
    return new Seat(
        place,
        from,
        to,
        Integer.parseInt(part[0]),
        part[1].equals("head"),
        part[2].equals("visit"));
  }
}
