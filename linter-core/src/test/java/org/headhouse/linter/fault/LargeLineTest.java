package org.headhouse.linter.fault;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.List;
import org.headhouse.linter.fault.Measurement.Quantity;
import org.junit.jupiter.api.Test;

/**
 * The largest line that the format allows, with every fault and at every place. Allocated bytes
 * stand for work, since they hardly differ from run to run.
 */
class LargeLineTest {
  private static final int UNITS = 247;

  /** What is done once for each fault may differ a little between lines. */
  private static final double MOST_TIMES = 1.2;

  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  @Test
  void aReadingTakesNoMoreWorkOnALongLine() {
    bytesForAReading(UNITS / 8);
    assertThat(bytesForAReading(UNITS)).isLessThan(MOST_TIMES * bytesForAReading(UNITS / 4));
  }

  private static double bytesForAReading(int units) {
    SegmentFaults segment = PlainLine.faults(units, 1);
    long before = THREADS.getCurrentThreadAllocatedBytes();
    int readings = shownOfAll(segment);
    long allocated = THREADS.getCurrentThreadAllocatedBytes() - before;
    assertThat(readings).isGreaterThan(9 * units * units * Quantity.values().length);
    return (double) allocated / readings;
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
