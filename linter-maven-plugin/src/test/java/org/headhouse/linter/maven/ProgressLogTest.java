package org.headhouse.linter.maven;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class ProgressLogTest {
  private final RecordingLog log = new RecordingLog();
  // A clock of nanoseconds may stand anywhere, and pass its greatest value.
  private final AtomicLong nanos = new AtomicLong(Long.MAX_VALUE - 1_000_000_000L);

  private void pass(double seconds) {
    nanos.addAndGet(Math.round(seconds * 1e9));
  }

  @Test
  void aShortCheckSaysNothing() {
    ProgressLog progress = new ProgressLog(log, 3, nanos::get);
    for (int files = 1; files <= 3; files++) {
      pass(0.6);
      progress.checked(files);
    }
    assertThat(log.lines()).isEmpty();
  }

  @Test
  void aLongCheckIsToldEveryTwoSeconds() {
    ProgressLog progress = new ProgressLog(log, 100, nanos::get);
    for (int files = 1; files <= 10; files++) {
      pass(0.5);
      progress.checked(files);
    }
    assertThat(log.lines())
        .containsExactly("info Checked 4 of 100 files.", "info Checked 8 of 100 files.");
  }

  @Test
  void theEndIsLeftToTheSummary() {
    ProgressLog progress = new ProgressLog(log, 2, nanos::get);
    pass(5);
    progress.checked(1);
    pass(5);
    progress.checked(2);
    assertThat(log.lines()).containsExactly("info Checked 1 of 2 files.");
  }
}
