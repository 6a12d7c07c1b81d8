package org.headhouse.linter.maven;

import org.apache.maven.plugin.logging.Log;
import org.headhouse.linter.CheckProgress;

/** Says how far a long check is, every two seconds. */
final class ProgressLog implements CheckProgress {
  private static final long NANOS_BETWEEN = 2_000_000_000L;

  private final Log log;
  private final int total;
  private long last = System.nanoTime();

  ProgressLog(Log log, int total) {
    this.log = log;
    this.total = total;
  }

  @Override
  public void checked(int files) {
    long now = System.nanoTime();
    if (now - last >= NANOS_BETWEEN) {
      last = now;
      log.info("Checked " + files + " of " + total + " files.");
    }
  }
}
