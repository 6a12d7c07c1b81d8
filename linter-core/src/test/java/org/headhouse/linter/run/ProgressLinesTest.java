package org.headhouse.linter.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class ProgressLinesTest {
  private final RecordingConsole console = new RecordingConsole();
  // A clock of nanoseconds may stand anywhere, and pass its greatest value.
  private final AtomicLong nanos = new AtomicLong(Long.MAX_VALUE - 1_000_000_000L);

  private void pass(double seconds) {
    nanos.addAndGet(Math.round(seconds * 1e9));
  }

  @Test
  void aShortCheckSaysNothing() {
    ProgressLines progress = new ProgressLines(console, 3, nanos::get);
    for (int files = 1; files <= 3; files++) {
      pass(0.6);
      progress.accept(files);
    }
    assertThat(console.lines()).isEmpty();
  }

  @Test
  void aLongCheckIsReportedEveryTwoSeconds() {
    ProgressLines progress = new ProgressLines(console, 100, nanos::get);
    for (int files = 1; files <= 10; files++) {
      pass(0.5);
      progress.accept(files);
    }
    assertThat(console.lines())
        .containsExactly(
            "report note Checked 4 of 100 files.", "report note Checked 8 of 100 files.");
  }

  @Test
  void theEndIsLeftToTheSummary() {
    ProgressLines progress = new ProgressLines(console, 2, nanos::get);
    pass(5);
    progress.accept(1);
    pass(5);
    progress.accept(2);
    assertThat(console.lines()).containsExactly("report note Checked 1 of 2 files.");
  }
}
