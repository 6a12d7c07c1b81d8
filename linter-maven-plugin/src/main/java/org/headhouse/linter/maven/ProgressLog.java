package org.headhouse.linter.maven;

import java.util.function.LongSupplier;
import org.apache.maven.plugin.logging.Log;
import org.headhouse.linter.CheckProgress;

/** Says how far a long check is, every two seconds. */
final class ProgressLog implements CheckProgress {
  private static final long NANOS_BETWEEN = 2_000_000_000L;

  private final Log log;
  private final int total;
  private final LongSupplier nanos;
  private long last;

  ProgressLog(Log log, int total) {
    this(log, total, System::nanoTime);
  }

  /**
   * @param nanos a clock that counts nanoseconds from any start
   */
  ProgressLog(Log log, int total, LongSupplier nanos) {
    this.log = log;
    this.total = total;
    this.nanos = nanos;
    this.last = nanos.getAsLong();
  }

  @Override
  public void checked(int files) {
    long now = nanos.getAsLong();
    if (now - last >= NANOS_BETWEEN && files < total) {
      last = now;
      log.info("Checked " + files + " of " + total + " files.");
    }
  }
}
