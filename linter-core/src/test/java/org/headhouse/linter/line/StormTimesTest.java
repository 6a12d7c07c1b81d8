package org.headhouse.linter.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.headhouse.linter.line.StormLine.Poller;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sums of worst times, by hand and against a line that is simulated event by event. */
class StormTimesTest {
  private static final SerialFormat AT_9600 = new SerialFormat(9600, true, 1);
  private static final double CHARACTER = 11 / 9600.0;

  /**
   * Computed: 12 registers are 33 bytes; 60 registers are 8 + 125; a silent unit costs its timeout
   * and its request at each of two tries.
   */
  @Test
  void theAgeHasItsParts() {
    BroadcastLoad broadcast = new BroadcastLoad(12, 5, 0.1);
    PollLoad polls = new PollLoad(60, 50, 20, 0.02, 1, 1);
    ReadingAge sound = ReadingAge.worst(AT_9600, broadcast, List.of(polls), 1, false);
    assertThat(sound.periodsSeconds()).isEqualTo(10);
    assertThat(sound.otherSeconds()).isCloseTo(140 * CHARACTER + 0.02, within(1e-12));
    assertThat(sound.frameSeconds()).isCloseTo(33 * CHARACTER, within(1e-12));
    ReadingAge silent = ReadingAge.worst(AT_9600, broadcast, List.of(polls), 0, true);
    assertThat(silent.totalSeconds())
        .isCloseTo(5 + 2 * (1 + 8 * CHARACTER) + 33 * CHARACTER, within(1e-12));
    assertThat(silent.staleSeconds(60))
        .isCloseTo(60 + 2 * (1 + 8 * CHARACTER) + 33 * CHARACTER, within(1e-12));
    ReadingAge alone = ReadingAge.worst(AT_9600, broadcast, List.of(), 1, true);
    assertThat(alone.overdueSeconds()).isCloseTo(33 * CHARACTER, within(1e-12));
  }

  /** Computed: (30 − 0.5) / 2. */
  @Test
  void thePeriodFollowsFromTheAge() {
    ReadingAge age = new ReadingAge(10, 0.4, 0.1);
    assertThat(age.longestPeriodSeconds(30, 1)).hasValueCloseTo(14.75, within(1e-12));
    assertThat(age.longestPeriodSeconds(0.5, 0)).isEmpty();
  }

  /** Computed: of 126 registers the first 125 are answered, then the unit falls silent. */
  @Test
  void aUnitMayFallSilentInTheMiddle() {
    PollLoad polls = new PollLoad(126, 1, 60, 0.03, 1, 0);
    assertThat(polls.longestSeconds(AT_9600, true))
        .isCloseTo(263 * CHARACTER + 7 * CHARACTER + 0.03 + 8 * CHARACTER + 1, within(1e-12));
    assertThat(polls.longestSeconds(AT_9600, false)).isEqualTo(polls.seconds(AT_9600));
    PollLoad hasty = new PollLoad(125, 1, 60, 0.02, 0.01, 0);
    assertThat(hasty.longestSeconds(AT_9600, true)).isEqualTo(hasty.seconds(AT_9600));
  }

  /** Computed: 10 + max(10.5, 0.5 + 60) + 90 s, and with less known. */
  @Test
  void theSumHasItsParts() {
    ReadingAge age = new ReadingAge(10, 0.4, 0.1);
    ClosingTime follower = ClosingTime.ofFollower(10.0, age, 60.0, 90.0);
    assertThat(follower.totalSeconds()).isCloseTo(160.5, within(1e-12));
    assertThat(follower.isComplete()).isTrue();
    assertThat(follower.isLongestOnDeadLine()).isTrue();
    ClosingTime quick = ClosingTime.ofFollower(10.0, age, 5.0, 90.0);
    assertThat(quick.totalSeconds()).isCloseTo(110.5, within(1e-12));
    assertThat(quick.isLongestOnDeadLine()).isFalse();
    ClosingTime stays = ClosingTime.ofFollowerThatStays(10.0, age, 90.0);
    assertThat(stays.totalSeconds()).isCloseTo(110.5, within(1e-12));
    assertThat(stays.isComplete()).isTrue();
    ClosingTime head = ClosingTime.ofHeadUnit(10.0, 90.0);
    assertThat(head.totalSeconds()).isCloseTo(100, within(1e-12));
    assertThat(head.isComplete()).isTrue();
  }

  /** What is not known is not taken as nothing: the sum is no bound then. */
  @Test
  void anUnknownPartLeavesTheSumOpen() {
    ReadingAge age = new ReadingAge(10, 0.4, 0.1);
    List<ClosingTime> open =
        List.of(
            ClosingTime.ofFollower(null, age, 60.0, 90.0),
            ClosingTime.ofFollower(10.0, null, 60.0, 90.0),
            ClosingTime.ofFollower(10.0, age, null, 90.0),
            ClosingTime.ofFollower(10.0, age, 60.0, null),
            ClosingTime.ofFollowerThatStays(null, age, 90.0),
            ClosingTime.ofFollowerThatStays(10.0, null, 90.0),
            ClosingTime.ofFollowerThatStays(10.0, age, null),
            ClosingTime.ofHeadUnit(null, 90.0),
            ClosingTime.ofHeadUnit(10.0, null));
    assertThat(open).noneMatch(ClosingTime::isComplete);
    assertThat(open)
        .extracting(ClosingTime::totalSeconds)
        .usingElementComparator((one, other) -> Math.abs(one - other) < 1e-9 ? 0 : 1)
        .containsExactly(150.5, 100.0, 110.5, 70.5, 100.5, 100.0, 20.5, 90.0, 10.0);
  }

  /** Read 10 at 9600: 45.833 ms without processing; read 125: 309.375 ms (computed). */
  @ParameterizedTest
  @CsvSource({"10, 0.045833", "125, 0.309375", "300, 0.309375"})
  void theTimeoutHasToOutlastTheAnswer(int registers, double seconds) {
    TimeoutNeed need = TimeoutNeed.of(AT_9600, registers, 0.02, 0.016, 2);
    assertThat(need.totalSeconds()).isCloseTo(seconds + 0.02 + 0.016 + 2, within(0.0000005));
    assertThat(need.silenceSeconds()).isCloseTo(2 * 0.00401042, within(1e-8));
    assertThat(need.charactersSeconds() + need.silenceSeconds())
        .isCloseTo(seconds, within(0.0000005));
  }

  /** A line with its zones and a piece of equipment, of which one zone is silent. */
  private static StormSearch random(Random random) {
    int[] rates = {4800, 9600, 19_200, 38_400};
    double period = 2 + random.nextInt(12);
    int lost = random.nextInt(3);
    int units = 2 + random.nextInt(20);
    int retries = random.nextInt(3);
    double timeout = 0.3 + random.nextInt(12) / 10.0;
    double every = units * 0.2 + (1 + retries) * timeout + 5 + random.nextInt(20);
    return new StormSearch(
        rates[random.nextInt(4)],
        1 + random.nextInt(40),
        period,
        random.nextInt(20),
        period * (lost + 1) + 1 + random.nextInt(60),
        20 + random.nextInt(100),
        lost,
        new Poller(
            units, 1 + random.nextInt(60), every, 0, 0.02, timeout, retries, random.nextInt(units)),
        List.of(new Poller(1, 4, 7 + random.nextInt(50), 0.5, 0.05, 1, 0, -1)));
  }

  private static ReadingAge age(StormSearch line) {
    return ReadingAge.worst(
        new SerialFormat(line.baud(), true, 1),
        new BroadcastLoad(line.registers(), line.period(), 0.1),
        List.of(load(line.silent()), load(line.others().get(0))),
        line.lost(),
        true);
  }

  private static PollLoad load(Poller poller) {
    return new PollLoad(
        poller.registers(),
        poller.units(),
        poller.periodSeconds(),
        poller.processingSeconds(),
        poller.timeoutSeconds(),
        poller.retries());
  }

  @Test
  void noRunIsLaterThanTheBoundAndTheWorstIsNearIt() {
    Random random = new Random(71);
    for (int number = 0; number < 60; number++) {
      StormSearch line = random(random);
      StormSearch.Worst worst = line.worst(random, 300);
      ReadingAge age = age(line);
      ClosingTime bound =
          ClosingTime.ofFollower(line.averaging(), age, line.staleAfter(), line.close());
      ClosingTime living = ClosingTime.ofFollowerThatStays(line.averaging(), age, line.close());
      assertNear(worst.age, age.totalSeconds(), line);
      assertNear(worst.closed, bound.totalSeconds(), line);
      assertNear(worst.closedOnLivingLine, living.totalSeconds(), line);
    }
  }

  private static void assertNear(double worst, double bound, StormSearch line) {
    assertThat(worst).as("%s", line).isBetween(0.9 * bound, bound + 1e-9);
  }

  /** A unit that gives up early only closes earlier. */
  @Test
  void aShortWaitIsNeverLater() {
    Random random = new Random(72);
    for (int number = 0; number < 30; number++) {
      StormSearch any = random(random);
      StormSearch line = any.withStaleAfter(any.period() * (0.2 + random.nextDouble()));
      double bound =
          ClosingTime.ofFollower(line.averaging(), age(line), line.staleAfter(), line.close())
              .totalSeconds();
      assertThat(line.worst(random, 60).closed).as("%s", line).isLessThanOrEqualTo(bound + 1e-9);
    }
  }
}
