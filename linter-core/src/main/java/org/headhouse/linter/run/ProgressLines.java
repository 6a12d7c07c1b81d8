package org.headhouse.linter.run;

import java.util.function.IntConsumer;
import java.util.function.LongSupplier;
import org.headhouse.linter.result.Level;

/** Says how far a long check is, every two seconds. */
public final class ProgressLines implements IntConsumer {
  private static final long NANOS_BETWEEN = 2_000_000_000L;

  private final Console console;
  private final int total;
  private final LongSupplier nanos;
  private long last;

  /**
   * @param total how many files will be checked
   */
  public ProgressLines(Console console, int total) {
    this(console, total, System::nanoTime);
  }

  /**
   * @param nanos a clock that counts nanoseconds from any start
   */
  ProgressLines(Console console, int total, LongSupplier nanos) {
    this.console = console;
    this.total = total;
    this.nanos = nanos;
    this.last = nanos.getAsLong();
  }

  @Override
  public void accept(int files) {
    long now = nanos.getAsLong();
    if (now - last >= NANOS_BETWEEN && files < total) {
      last = now;
      console.report(Level.NOTE, "Checked " + files + " of " + total + " files.");
    }
  }
}
