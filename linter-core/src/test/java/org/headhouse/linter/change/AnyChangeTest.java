package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.headhouse.linter.RandomCases;
import org.headhouse.linter.change.PlayedPlan.Trouble;
import org.headhouse.linter.change.PollingChange.Client;
import org.headhouse.linter.site.ExcludedAddresses;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Changes with every kind of edit there is a key for, played on a line with software that polls and
 * writes. Each server address is unique on the bus (MODBUS over Serial Line V1.02, 2.2) and each
 * segment has two terminators (3.4.5) after every step; the rest is common practice, no source.
 */
class AnyChangeTest {

  private static final int SOME = 250;
  private static final int MANY = 1500;

  @Promise({
    "one-address",
    "right-house",
    "whole-line",
    "opened-once",
    "readings-listed",
    "vents-named",
    "measured-isolated",
    "checked",
    "power-failure"
  })
  @ParameterizedTest
  @EnumSource(Trouble.class)
  void noChangeDoesHarm(Trouble trouble) {
    play(trouble, SOME);
  }

  @Tag("long")
  @ParameterizedTest
  @EnumSource(Trouble.class)
  void noneOfManyChangesDoesHarm(Trouble trouble) {
    play(trouble, MANY);
  }

  private static void play(Trouble trouble, int cases) {
    AtomicInteger measured = new AtomicInteger();
    double planned =
        RandomCases.share(
            cases,
            random -> {
              Played played = new Played(random, trouble);
              played.plan.play(played.steps);
              played.assertLater();
              measured.addAndGet(played.plan.measured());
              return !played.steps.isEmpty();
            });
    assertThat(planned).isGreaterThan(0.8);
    assertThat(measured.get()).isPositive();
  }

  /** Two or three devices share an address at first: the plan leads out of that. */
  @Promise("one-address")
  @ParameterizedTest
  @EnumSource(Trouble.class)
  void sharedAddressesAreSeparated(Trouble trouble) {
    separate(trouble, SOME);
  }

  @Tag("long")
  @ParameterizedTest
  @EnumSource(Trouble.class)
  void manySharedAddressesAreSeparated(Trouble trouble) {
    separate(trouble, MANY);
  }

  private static void separate(Trouble trouble, int cases) {
    double shared =
        RandomCases.share(
            cases,
            random -> {
              Played played = new Played(random, trouble, true);
              played.plan.play(played.steps);
              played.assertLater();
              return played.steps.stream()
                  .anyMatch(
                      step ->
                          step.work() instanceof Step.Separate
                              || step.work() instanceof Step.SwitchOff);
            });
    assertThat(shared).isGreaterThan(0.8);
  }

  @Promise("way-back")
  @Test
  void eachStepHasItsWayBack() {
    undo(SOME);
  }

  @Tag("long")
  @Test
  void eachStepOfManyChangesHasItsWayBack() {
    undo(MANY);
  }

  private static void undo(int cases) {
    RandomCases.each(
        cases,
        random -> {
          Played played = new Played(random, Trouble.NONE);
          played.plan.playAndUndo(played.steps);
        });
  }

  private static final class Played {
    final List<PlannedStep> steps;
    final boolean isPlanned;
    final PlayedPlan plan;
    private final RandomSite after;
    private final LiveLine line;
    private final LivePolling software = new LivePolling(Client.SOFTWARE);
    private final LivePolling head = new LivePolling(Client.HEAD);

    Played(Random random, Trouble trouble) {
      this(random, trouble, false);
    }

    Played(Random random, Trouble trouble, boolean shared) {
      RandomSite before = RandomSite.of(random, 7);
      after = RandomEdits.edited(before, random);
      if (shared) {
        RandomEdits.share(before, random);
      }
      SiteChange.Changed changed =
          SiteComparison.of(
              States.site(before.text()), States.site(after.text()), ExcludedAddresses.NONE);
      isPlanned = changed.work() instanceof FieldWork.Plan;
      // One that is exchanged and moved at once has no plan, and there is no other such case.
      assertThat(changed.work())
          .as("%s", after.text())
          .matches(work -> isPlanned || work.toString().contains("one device before and another"));
      steps = changed.work() instanceof FieldWork.Plan made ? made.steps() : List.of();
      Map<String, String> renamed = new HashMap<>();
      for (Difference difference : changed.differences()) {
        if (difference instanceof Difference.Renamed one) {
          renamed.put(one.from(), one.item());
        }
      }
      line = new LiveLine(before.items(renamed), after.items(Map.of()), before.serial());
      for (Map<String, String> item : before.addressed()) {
        String name = RandomSite.name(item);
        Integer address = RandomSite.address(item);
        if (address != null) {
          // What has no display of its own has the later name on paper only.
          String listed = before.is(item, "unit") ? name : renamed.getOrDefault(name, name);
          boolean byHead = item.getOrDefault("polled", "").contains("by: head");
          (byHead ? head : software)
              .list(
                  listed,
                  renamed.getOrDefault(name, name),
                  address,
                  item.getOrDefault("device-type", ""));
        }
      }
      plan = new PlayedPlan(line, software, head, trouble);
    }

    /** At the end it is the line of the later state, and each device is asked at its address. */
    void assertLater() {
      if (!isPlanned) {
        return;
      }
      line.assertSettled();
      assertThat(line.chain())
          .containsExactlyElementsOf(after.chain.stream().map(RandomSite::name).toList());
      line.assertProtected(after.items(Map.of()));
      Map<String, Integer> addresses = new TreeMap<>();
      for (Map<String, String> item : after.addressed()) {
        Integer address = RandomSite.address(item);
        if (address != null) {
          addresses.put(RandomSite.name(item), address);
        }
      }
      assertThat(line.answering()).isEqualTo(addresses);
      assertThat(software.running).isTrue();
      Map<String, Integer> asked = new TreeMap<>(software.addresses());
      asked.putAll(head.addresses());
      assertThat(asked).as("%s", steps).isEqualTo(addresses);
    }
  }
}
