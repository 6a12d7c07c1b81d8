package org.headhouse.linter.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.List;
import org.headhouse.linter.fault.Measurement.Quantity;
import org.junit.jupiter.api.Test;

/** The largest line that the format allows, with every fault and at every place. */
class LargeLineTest {
  private static final int UNITS = 247;
  private static final double MOST_SECONDS = 2;

  @Test
  void allFaultsAtAllPlacesTakeUnderTwoSeconds() {
    shownOfAll(PlainLine.faults(60, 1));
    ThreadMXBean processor = ManagementFactory.getThreadMXBean();
    long before = processor.getCurrentThreadCpuTime();
    int readings = shownOfAll(PlainLine.faults(UNITS, 1));
    double seconds = (processor.getCurrentThreadCpuTime() - before) / 1e9;
    assertThat(readings).isGreaterThan(2400 * UNITS * 7);
    assertThat(seconds).isLessThan(MOST_SECONDS);
  }

  private static int shownOfAll(SegmentFaults segment) {
    int readings = 0;
    for (Hypothesis one : segment.hypotheses(List.of())) {
      for (Quantity quantity : Quantity.values()) {
        for (int item = 0; item < segment.items(); item++) {
          Span shown = one.shown(new Measurement(quantity, item));
          readings += shown.low() <= shown.high() ? 1 : 0;
        }
      }
    }
    return readings;
  }
}
