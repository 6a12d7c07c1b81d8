package org.headhouse.linter.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TrafficTest {
  private static final SerialFormat AT_9600 = new SerialFormat(9600, true, 1);
  private static final BroadcastLoad BROADCAST = new BroadcastLoad(12, 5, 0.1);
  private static final PollLoad POLLS = new PollLoad(60, 50, 20, 0.02, 1, 1);
  private static final Offset<Double> ROUNDING = within(1e-12);

  /**
   * Computed: six registers are 21 bytes, 24.063 ms at 9600 bit/s; the silence after them is 4.010
   * ms, the turnaround 100 ms, the least of MODBUS over Serial Line V1.02 §2.4.1 (read).
   */
  @Test
  void aBroadcastIsFrameSilenceAndTurnaround() {
    BroadcastLoad six = new BroadcastLoad(6, 5, BroadcastLoad.TURNAROUND_SECONDS);
    assertThat(six.frameSeconds(AT_9600)).isCloseTo(24.063e-3, within(0.0005e-3));
    assertThat(six.seconds(AT_9600)).isCloseTo(24.0625e-3 + 4.0104167e-3 + 0.1, within(1e-9));
  }

  /** Computed: (9 + 2N) characters for each frame of at most 123 registers. */
  @ParameterizedTest
  @CsvSource({"123, 1, 255", "124, 2, 266", "246, 2, 510", "247, 3, 521"})
  void aLongBroadcastNeedsSeveralFrames(int registers, int frames, int characters) {
    BroadcastLoad broadcast = new BroadcastLoad(registers, 60, 0.15);
    double wire = characters * 11 / 9600.0;
    double pause = 3.5 * 11 / 9600 + 0.15;
    assertThat(broadcast.seconds(AT_9600)).isCloseTo(wire + frames * pause, ROUNDING);
    assertThat(broadcast.frameSeconds(AT_9600)).isCloseTo(wire + (frames - 1) * pause, ROUNDING);
  }

  /** Computed: (8 + 5 + 2N) characters, 2 · t3.5 and processing for each 125 registers at most. */
  @ParameterizedTest
  @CsvSource({"1, 1, 15", "10, 1, 33", "125, 1, 263", "126, 2, 278", "250, 2, 526", "300, 3, 639"})
  void aLongPollNeedsSeveralRequests(int registers, int requests, int characters) {
    PollLoad polls = new PollLoad(registers, 1, 60, 0.03, 1, 0);
    double overhead = 2 * 3.5 * 11 / 9600 + 0.03;
    assertThat(polls.seconds(AT_9600))
        .isCloseTo(characters * 11 / 9600.0 + requests * overhead, ROUNDING);
  }

  /** Computed step by step from a character of 11/9600 s. */
  @Test
  void theFiguresOfAnExample() {
    double character = 11 / 9600.0;
    double broadcast = 33 * character + 3.5 * character + 0.1;
    double poll = 133 * character + 7 * character + 0.02;
    TrafficFigures figures =
        TrafficFigures.of(new Traffic(AT_9600, BROADCAST, List.of(POLLS), List.of()), 1);
    assertThat(figures.characterSeconds()).isCloseTo(1.1458333e-3, within(1e-10));
    assertThat(figures.broadcastSeconds()).isCloseTo(broadcast, ROUNDING);
    assertThat(figures.pollSeconds()).isCloseTo(poll, ROUNDING);
    assertThat(figures.utilisation()).isCloseTo(broadcast / 5 + 50 * poll / 20, ROUNDING);
    assertThat(figures.utilisation()).isCloseTo(0.47940625, within(1e-8));
    assertThat(figures.worstAgeSeconds()).isCloseTo(5 + poll + 33 * character, ROUNDING);
    assertThat(figures.worstAgeOneSilentSeconds())
        .isCloseTo(5 + 2 * 1.0 + 8 * character + 33 * character, ROUNDING);
  }

  @ParameterizedTest
  @CsvSource({"1, 0, 1", "1, 1, 2", "0.5, 3, 2"})
  void aSilentUnitCostsATimeoutEachTry(double timeoutSeconds, int retries, double expected) {
    PollLoad polls = new PollLoad(60, 50, 20, 0.02, timeoutSeconds, retries);
    assertThat(polls.silentSeconds(AT_9600)).isCloseTo(expected + 8 * 11 / 9600.0, ROUNDING);
  }

  /** A timeout that is shorter than an answer does not make the readings younger. */
  @Test
  void theLongestOtherTransactionCounts() {
    PollLoad hasty = new PollLoad(125, 50, 200, 0.02, 0.05, 0);
    Traffic traffic = new Traffic(AT_9600, BROADCAST, List.of(hasty), List.of());
    assertThat(traffic.worstAgeOneSilentSeconds()).isEqualTo(traffic.worstAgeSeconds());
  }

  @Test
  void whatIsNotThereTakesNoTime() {
    TrafficFigures quiet =
        TrafficFigures.of(new Traffic(AT_9600, BROADCAST, List.of(), List.of()), 1);
    assertThat(quiet.pollSeconds()).isNull();
    assertThat(quiet.utilisation()).isCloseTo(BROADCAST.seconds(AT_9600) / 5, ROUNDING);
    assertThat(quiet.worstAgeSeconds()).isCloseTo(5 + 33 * 11 / 9600.0, ROUNDING);
    assertThat(quiet.worstAgeOneSilentSeconds()).isEqualTo(quiet.worstAgeSeconds());
    TrafficFigures polled =
        TrafficFigures.of(new Traffic(AT_9600, null, List.of(POLLS), List.of()), 1);
    assertThat(polled.broadcastSeconds()).isNull();
    assertThat(polled.worstAgeSeconds()).isNull();
    assertThat(polled.worstAgeOneSilentSeconds()).isNull();
    assertThat(polled.utilisation()).isCloseTo(50 * POLLS.seconds(AT_9600) / 20, ROUNDING);
  }
}
