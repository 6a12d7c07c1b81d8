package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.change.States.Item;
import org.headhouse.linter.site.ExcludedAddresses;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What each way of giving addresses costs, counted by hand. */
class AddressingWaysTest {

  private static List<Item> chain(String units) {
    List<Item> items = new ArrayList<>();
    for (String unit : units.split(", ", -1)) {
      String[] part = unit.split(" ", -1);
      items.add(Item.unit(part[0], Integer.parseInt(part[1])));
    }
    return items;
  }

  private static List<AddressingWay> ways(String before, String after, ExcludedAddresses keptFree) {
    FieldWork work =
        SiteComparison.of(States.site(chain(before)), States.site(chain(after)), keptFree).work();
    assertThat(work).isInstanceOf(FieldWork.Plan.class);
    return ((FieldWork.Plan) work).addressing();
  }

  private static String reported(AddressingWay way) {
    return way.kind().word()
        + " "
        + way.addresses()
        + " "
        + way.settings()
        + " "
        + way.visits()
        + (way.asWritten() ? " written" : "");
  }

  @Promise("both-ways")
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // N between B and C: three places are opened; renumbering sets C and D.
        "H 1, B 2, C 3, D 4 | H 1, B 2, N 3, C 4, D 5 | next-free {N=5} 0 3 | chain-order {N=3, C=4, D=5} 2 4 written",
        "H 1, B 2, C 3, D 4 | H 1, B 2, N 5, C 3, D 4 | next-free {N=5} 0 3 written | chain-order {N=3, C=4, D=5} 2 4",
        // At the end both ways are one.
        "H 1, B 2           | H 1, B 2, N 3           | next-free {N=3} 0 2 written | chain-order {N=3} 0 2 written",
        // B and C stand the wrong way round: to renumber them takes a spare address.
        "H 1, B 3, C 2      | H 1, B 3, C 2, N 4      | next-free {N=4} 0 2 written | chain-order {B=2, C=3, N=4} 3 4",
        // The file has neither.
        "H 1, B 2, C 3      | H 1, N 9, B 2, C 3      | next-free {N=4} 0 3 | chain-order {N=2, B=3, C=4} 2 4",
        // B and C share an address: one of them is visited and set in either way.
        "H 1, B 2, C 2, D 4 | H 1, B 2, C 3, D 4, N 5 | next-free {N=5} 1 3 written | chain-order {N=5} 1 3 written",
      })
  void bothWaysAreCounted(String before, String after, String nextFree, String chainOrder) {
    assertThat(
            ways(before, after, ExcludedAddresses.NONE).stream().map(AddressingWaysTest::reported))
        .containsExactly(nextFree, chainOrder);
  }

  @Test
  void addressesThatAreKeptFreeArePassedOver() {
    assertThat(
            ways("H 1, B 2, C 3", "H 1, B 2, N 9, C 3", ExcludedAddresses.NONE.and(List.of(3, 4)))
                .stream()
                .map(AddressingWaysTest::reported))
        .containsExactly("next-free {N=5} 0 3", "chain-order {N=5, C=6} 1 3");
  }

  /** An address that the site holds for a unit in store is handed out by neither way. */
  @ParameterizedTest
  @CsvSource({"''", "', until: 2020-01-01'"})
  void anAddressThatIsHeldIsPassedOver(String until) {
    String before =
        """
        stage: commissioned
        chain:
          - {unit: H, role: head, address: 1}
          - {unit: B, role: follower, address: 3}
        suppressions: [{rule: address.gap, unit: B, justification: Unit 2 is in store%s}]
        """
            .formatted(until);
    String after =
        before.replace("  - {unit: B", "  - {unit: N, role: follower, address: 4}\n  - {unit: B");
    FieldWork work =
        SiteComparison.of(States.site(before), States.site(after), ExcludedAddresses.NONE).work();
    assertThat(((FieldWork.Plan) work).addressing())
        .extracting(AddressingWaysTest::reported)
        .containsExactly("next-free {N=4} 0 3 written", "chain-order {N=3, B=4} 1 3");
  }

  /** Nobody is asked where no unit joins, or where the head unit itself is new. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"H 1, B 2 | H 1, B 3", "H 1, B 2, C 3 | H 1, B 2", "H 1, B 2 | N 1, B 2"})
  void onlyWhereAUnitJoins(String before, String after) {
    assertThat(ways(before, after, ExcludedAddresses.NONE)).isEmpty();
  }

  /** Where an address would be beyond 247 that way is not offered. */
  @Test
  void aWayThatCannotBeSetIsNotOffered() {
    assertThat(
            ways("H 1, B 247", "H 1, B 247, N 2", ExcludedAddresses.NONE).stream()
                .map(AddressingWaysTest::reported))
        .containsExactly("chain-order {B=2, N=3} 1 2");
  }
}
