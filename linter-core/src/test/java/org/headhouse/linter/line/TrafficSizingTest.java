package org.headhouse.linter.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What is found is put back: the traffic then just fits (computed). */
class TrafficSizingTest {
  private static final SerialFormat AT_9600 = new SerialFormat(9600, true, 1);
  private static final BroadcastLoad BROADCAST = new BroadcastLoad(12, 0.5, 0.1);
  private static final PollLoad POLLS = new PollLoad(60, 50, 20, 0.02, 1, 1);
  private static final Traffic BUSY = new Traffic(AT_9600, BROADCAST, List.of(POLLS), List.of());

  @Test
  void theShortestPeriodOfTheBroadcastJustFits() {
    double period = TrafficSizing.shortestBroadcastPeriodSeconds(BUSY, 0.7).orElseThrow();
    BroadcastLoad slower = new BroadcastLoad(12, period, 0.1);
    assertThat(new Traffic(AT_9600, slower, List.of(POLLS), List.of()).utilisation())
        .isCloseTo(0.7, within(1e-12));
    assertThat(TrafficSizing.shortestBroadcastPeriodSeconds(BUSY, 0.45)).isEmpty();
    assertThat(
            TrafficSizing.shortestBroadcastPeriodSeconds(
                new Traffic(AT_9600, null, List.of(POLLS), List.of()), 0.7))
        .isEmpty();
  }

  @Test
  void theShortestPeriodOfThePollsJustFits() {
    double period =
        TrafficSizing.shortestPollPeriodSeconds(BUSY, BUSY.zonePolls(), 0.7).orElseThrow();
    PollLoad slower = new PollLoad(60, 50, period, 0.02, 1, 1);
    assertThat(new Traffic(AT_9600, BROADCAST, List.of(slower), List.of()).utilisation())
        .isCloseTo(0.7, within(1e-12));
    assertThat(TrafficSizing.shortestPollPeriodSeconds(BUSY, BUSY.zonePolls(), 0.28)).isEmpty();
    assertThat(TrafficSizing.shortestPollPeriodSeconds(BUSY, List.of(), 0.7)).isEmpty();
  }

  /** With nothing left, no period is long or short enough. */
  @Test
  void nothingLeftIsNotEnough() {
    Traffic noPolls = new Traffic(AT_9600, BROADCAST, List.of(), List.of());
    Traffic noBroadcast = new Traffic(AT_9600, null, List.of(POLLS), List.of());
    assertThat(TrafficSizing.shortestBroadcastPeriodSeconds(noPolls, 0)).isEmpty();
    assertThat(TrafficSizing.shortestPollPeriodSeconds(noBroadcast, List.of(POLLS), 0)).isEmpty();
  }

  /** In use: 0.735 at 9600, 0.492 at 19 200, 0.376 at 38 400 bit/s. */
  @Test
  void theNextRateThatFitsIsFound() {
    assertThat(BUSY.utilisation()).isCloseTo(0.735, within(0.0005));
    assertThat(BUSY.withBaud(19_200).utilisation()).isCloseTo(0.4923, within(0.00006));
    assertThat(TrafficSizing.nextBaud(BUSY, traffic -> traffic.utilisation() <= 0.7))
        .hasValue(19_200);
    assertThat(TrafficSizing.nextBaud(BUSY, traffic -> traffic.utilisation() <= 0.4))
        .hasValue(38_400);
    assertThat(TrafficSizing.nextBaud(BUSY, traffic -> traffic.utilisation() <= 0.01)).isEmpty();
    assertThat(TrafficSizing.nextBaud(BUSY.withBaud(115_200), traffic -> true)).isEmpty();
    assertThat(TrafficSizing.nextBaud(BUSY.withBaud(57_600), traffic -> true)).hasValue(115_200);
    assertThat(TrafficSizing.nextBaud(BUSY.withBaud(300), traffic -> true)).hasValue(1200);
  }
}
