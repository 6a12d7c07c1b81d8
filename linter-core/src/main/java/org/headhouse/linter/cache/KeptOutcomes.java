package org.headhouse.linter.cache;

import java.io.IOException;
import java.io.OutputStream;
import org.headhouse.linter.stability.Internal;

/**
 * The outcomes of files that were checked, from one check to the next. A file with the same name
 * and the same bytes is not checked again as long as the {@link Circumstances} are the same.
 *
 * <p>What a check met takes the place of what was there once the check is through, and not before.
 * So several checks at a time do not disturb each other: the last one to end is what is kept.
 */
public final class KeptOutcomes {
  private Stored stored;
  private boolean changed;

  private KeptOutcomes(Stored stored) {
    this.stored = stored;
  }

  /** Nothing is kept yet. */
  public static KeptOutcomes none() {
    return new KeptOutcomes(Stored.NOTHING);
  }

  /**
   * What was written by {@link #write}; nothing where that is damaged or something else.
   *
   * @param bytes not changed any more by the caller
   */
  public static KeptOutcomes of(byte[] bytes) {
    return new KeptOutcomes(KeptForm.read(bytes));
  }

  /**
   * Starts a check.
   *
   * @param now outcomes that were kept under others are not used
   */
  @Internal
  public synchronized KeptCheck start(Circumstances now) {
    return new KeptCheck(this, now.digest(), stored);
  }

  synchronized void replace(Stored next, boolean differs) {
    stored = next;
    changed |= differs;
  }

  /** Whether a check that ended met anything that was not kept, or misses a file. */
  public synchronized boolean isChanged() {
    return changed;
  }

  /** How many bytes {@link #write} writes. */
  public synchronized long size() {
    return KeptForm.size(stored);
  }

  /** Writes the outcomes of the last check that ended, or what was there where none did. */
  public void write(OutputStream out) throws IOException {
    Stored written;
    synchronized (this) {
      written = stored;
    }
    KeptForm.write(written, out);
  }
}
