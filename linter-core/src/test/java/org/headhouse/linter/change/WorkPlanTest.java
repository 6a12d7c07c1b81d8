package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.headhouse.linter.RandomCases;
import org.headhouse.linter.change.States.Item;
import org.headhouse.linter.site.ExcludedAddresses;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Plans are played on a line, step by step: no two units that answer share an address, and between
 * two steps the line is whole (terminators at both ends and nowhere else: Modbus over Serial Line
 * V1.02, 3.4.5). At the end it is the line of the later state.
 */
class WorkPlanTest {
  private static final int LONG = 30;

  private static List<PlannedStep> steps(List<Item> before, List<Item> after) {
    FieldWork work =
        SiteComparison.of(States.site(before), States.site(after), ExcludedAddresses.NONE).work();
    assertThat(work).isInstanceOf(FieldWork.Plan.class);
    FieldWork.Plan plan = (FieldWork.Plan) work;
    assertThat(plan.remarks()).allMatch(one -> one.contains(" is taken for "));
    return plan.steps();
  }

  private static PlayedPlan played(List<Item> before, List<Item> after) {
    List<PlannedStep> steps = steps(before, after);
    LiveLine line = line(before, after);
    PlayedPlan played = on(line, PlayedPlan.Trouble.NONE);
    played.play(steps);
    assertThat(line.chain()).containsExactlyElementsOf(after.stream().map(Item::name).toList());
    assertThat(line.answering())
        .containsExactlyInAnyOrderEntriesOf(
            after.stream()
                .filter(item -> !item.isRepeater())
                .collect(Collectors.toMap(Item::name, Item::address)));
    if (before.size() < LONG) {
      on(line(before, after), PlayedPlan.Trouble.FORGOTTEN_RESTART).play(steps);
      on(line(before, after), PlayedPlan.Trouble.POWER_FAILS).playAndUndo(steps);
    }
    return played;
  }

  private static PlayedPlan on(LiveLine line, PlayedPlan.Trouble trouble) {
    return new PlayedPlan(
        line,
        new LivePolling(PollingChange.Client.SOFTWARE),
        new LivePolling(PollingChange.Client.HEAD),
        trouble);
  }

  private static LiveLine line(List<Item> before, List<Item> after) {
    return new LiveLine(
        items(renamed(before, after)),
        items(after),
        Map.of("baud", "9600", "parity", "even", "stop-bits", "1"));
  }

  private static List<LiveItem> items(List<Item> chain) {
    List<LiveItem> items = new ArrayList<>();
    for (int i = 0; i < chain.size(); i++) {
      items.add(LiveItem.of(chain.get(i), i == 0, i == 0 || i + 1 == chain.size()));
    }
    return items;
  }

  /** The earlier chain with the later names, as far as units are told to be the same. */
  private static List<Item> renamed(List<Item> before, List<Item> after) {
    Map<String, String> names = new HashMap<>();
    for (Difference difference : SiteDifferences.between(States.site(before), States.site(after))) {
      if (difference instanceof Difference.Renamed renamed) {
        names.put(renamed.from(), renamed.item());
      }
    }
    return before.stream()
        .map(
            item ->
                new Item(names.getOrDefault(item.name(), item.name()), item.address(), item.more()))
        .toList();
  }

  /** Every order of a few addresses on a chain that stays; ReaddressingOrderTest goes further. */
  @Promise("fewest-settings")
  @ParameterizedTest
  @ValueSource(ints = {2, 3, 4})
  void everyPermutationOfAddressesIsSafe(int units) {
    playPermutations(units);
  }

  @Tag("long")
  @ParameterizedTest
  @ValueSource(ints = {5, 6})
  void everyPermutationOfMoreAddressesIsSafe(int units) {
    playPermutations(units);
  }

  private static void playPermutations(int units) {
    List<Item> before = numbered(units);
    for (List<Integer> addresses : permutations(units)) {
      List<Item> after = new ArrayList<>();
      for (int i = 0; i < units; i++) {
        after.add(before.get(i).at(addresses.get(i)));
      }
      assertThat(played(before, after).addressesSet()).isEqualTo(least(before, after));
    }
  }

  private static List<Item> numbered(int units) {
    List<Item> items = new ArrayList<>();
    for (int i = 1; i <= units; i++) {
      items.add(Item.unit("House " + i, i));
    }
    return items;
  }

  private static List<List<Integer>> permutations(int units) {
    if (units == 0) {
      return List.of(List.of());
    }
    List<List<Integer>> all = new ArrayList<>();
    for (List<Integer> fewer : permutations(units - 1)) {
      for (int at = 0; at <= fewer.size(); at++) {
        List<Integer> one = new ArrayList<>(fewer);
        one.add(at, units);
        all.add(one);
      }
    }
    return all;
  }

  /** Units that stay and move, and one more for each cycle among them. */
  private static int least(List<Item> before, List<Item> after) {
    Map<String, Integer> to = new HashMap<>();
    after.forEach(item -> to.put(item.name(), item.address()));
    Map<Integer, Integer> moves = new HashMap<>();
    for (Item item : before) {
      Integer address = to.get(item.name());
      if (address != null && !item.isRepeater() && address != item.address()) {
        moves.put(item.address(), address);
      }
    }
    int cycles = 0;
    Set<Integer> seen = new HashSet<>();
    for (Integer start : moves.keySet()) {
      Set<Integer> path = new HashSet<>();
      Integer at = start;
      while (at != null && moves.containsKey(at) && !seen.contains(at) && path.add(at)) {
        at = moves.get(at);
      }
      if (at != null && path.contains(at)) {
        cycles++;
      }
      seen.addAll(path);
    }
    return moves.size() + cycles;
  }

  /** Houses and repeaters are put in, taken out and moved, and addresses dealt anew. */
  @ParameterizedTest
  @ValueSource(ints = {3, 6})
  void smallChangesAreSafe(int most) {
    playChanges(most, 40);
  }

  @Tag("long")
  @ParameterizedTest
  @ValueSource(ints = {3, 5, 9, 20, 60})
  void anyChangeIsSafe(int most) {
    playChanges(most, 2000 / most);
  }

  private static void playChanges(int most, int runs) {
    RandomCases.each(
        runs,
        random -> {
          List<Item> before = chain(random, most);
          List<Item> after = changed(random, before);
          assertThat(played(before, after).addressesSet())
              .as("%s to %s", before, after)
              .isEqualTo(least(renamed(before, after), after));
        });
  }

  /** A long line with any addresses of 1 to 254. */
  @Tag("long")
  @Test
  void aLongLineIsSafe() {
    List<Item> before = numbered(250);
    RandomCases.each(
        3,
        random -> {
          List<Item> after = changed(random, before);
          assertThat(played(before, after).addressesSet())
              .isEqualTo(least(renamed(before, after), after));
        });
  }

  private static List<Item> chain(Random random, int most) {
    int units = 2 + random.nextInt(most - 1);
    List<Item> items = dealt(random, numbered(units), random.nextBoolean());
    addRepeaters(random, items, "Old repeater ");
    return items;
  }

  private static void addRepeaters(Random random, List<Item> items, String name) {
    for (int i = 0; i < 2 && random.nextInt(3) == 0; i++) {
      items.add(1 + random.nextInt(items.size() - 1), Item.repeater(name + i));
    }
  }

  /** The head unit stays in front, and the last item is a unit. */
  private static List<Item> changed(Random random, List<Item> before) {
    Item head = before.get(0);
    List<Item> rest = new ArrayList<>(before.subList(1, before.size()));
    rest.removeIf(item -> random.nextInt(6) == 0);
    if (random.nextInt(3) == 0) {
      Collections.shuffle(rest, random);
    }
    for (int i = 0; i < 4 && (rest.isEmpty() || random.nextBoolean()) && rest.size() < 250; i++) {
      rest.add(random.nextInt(rest.size() + 1), Item.unit("New house " + i, 1));
    }
    if (rest.get(rest.size() - 1).isRepeater()) {
      rest.add(Item.unit("Last house", 1));
    }
    List<Item> after = new ArrayList<>(rest);
    after.add(0, head);
    addRepeaters(random, after, "New repeater ");
    return dealt(random, after, random.nextInt(3) > 0);
  }

  /** Addresses along the chain, or any. */
  private static List<Item> dealt(Random random, List<Item> items, boolean inOrder) {
    List<Integer> addresses = new ArrayList<>();
    for (int address = 1; address <= Math.min(254, items.size() + 3); address++) {
      addresses.add(address);
    }
    if (!inOrder) {
      Collections.shuffle(addresses, random);
    }
    List<Item> dealt = new ArrayList<>();
    int next = 0;
    for (Item item : items) {
      dealt.add(item.isRepeater() ? item : item.at(addresses.get(next++)));
    }
    return dealt;
  }

  record Case(String name, List<Item> before, List<Item> after, List<String> steps) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static final Item HEAD = Item.unit("Head", 1);

  static List<Case> cases() {
    return List.of(
        new Case(
            "a house in the middle: the far ones move first, and the new one is set before",
            List.of(HEAD, Item.unit("B", 2), Item.unit("C", 3), Item.unit("D", 4)),
            List.of(
                HEAD, Item.unit("B", 2), Item.unit("N", 3), Item.unit("C", 4), Item.unit("D", 5)),
            List.of("prepare N 3", "D 4>5", "C 3>4", "wire B N C")),
        new Case(
            "a house at the end: its terminator comes as the old one goes",
            List.of(HEAD, Item.unit("B", 2)),
            List.of(HEAD, Item.unit("B", 2), Item.unit("N", 3)),
            List.of("prepare N 3", "wire B N")),
        new Case(
            "a house goes, and those behind close up: it is switched off before",
            List.of(HEAD, Item.unit("B", 2), Item.unit("C", 3), Item.unit("D", 4)),
            List.of(HEAD, Item.unit("C", 2), Item.unit("D", 3)),
            List.of("off B 2", "C 3>2", "D 4>3", "wire Head B C")),
        new Case(
            "a house goes and nobody wants its address: one visit",
            List.of(HEAD, Item.unit("B", 2), Item.unit("C", 3)),
            List.of(HEAD, Item.unit("B", 2)),
            List.of("wire B C")),
        new Case(
            "one house for another at its place: both in one go",
            List.of(HEAD, Item.unit("B", 2, "device-type: old"), Item.unit("C", 3)),
            List.of(HEAD, Item.unit("B", 2, "device-type: new"), Item.unit("C", 3)),
            List.of("prepare B 2", "wire B")),
        new Case(
            "two addresses change places: a spare one, and the rest along the chain",
            List.of(HEAD, Item.unit("B", 2), Item.unit("C", 3), Item.unit("D", 7)),
            List.of(HEAD, Item.unit("B", 3), Item.unit("C", 2), Item.unit("D", 4)),
            List.of("D 7>4", "B 2>5 spare", "C 3>2", "B 5>3")),
        new Case(
            "two houses at two places: two goes",
            List.of(HEAD, Item.unit("B", 2), Item.unit("C", 3), Item.unit("D", 4)),
            List.of(
                HEAD,
                Item.unit("N", 5),
                Item.unit("B", 2),
                Item.unit("C", 3),
                Item.unit("M", 6),
                Item.unit("D", 4)),
            List.of("prepare N 5", "prepare M 6", "wire Head N B", "wire C M D")));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void theOrderIsAsTheTradeWouldHaveIt(Case one) {
    assertThat(
            steps(one.before(), one.after()).stream()
                .map(PlannedStep::work)
                .map(WorkPlanTest::text))
        .containsExactlyElementsOf(one.steps());
  }

  private static String text(Step step) {
    if (step instanceof Step.Prepare prepare) {
      return "prepare " + prepare.unit() + " " + prepare.address();
    }
    if (step instanceof Step.SwitchOff off) {
      return "off " + off.unit() + " " + off.address();
    }
    if (step instanceof Step.SetAddress set) {
      return set.unit() + " " + set.from() + ">" + set.to() + (set.spare() ? " spare" : "");
    }
    if (step instanceof Step.Wire wire) {
      return "wire "
          + wire.places().stream().map(WiringPlace::item).collect(Collectors.joining(" "));
    }
    return step.toString();
  }
}
