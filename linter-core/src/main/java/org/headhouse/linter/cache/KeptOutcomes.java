package org.headhouse.linter.cache;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.headhouse.linter.check.FileOutcome;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * The outcomes of files that were checked, from one check to the next. A file with the same name
 * and the same bytes is not checked again as long as the {@link Circumstances} are the same.
 *
 * <p>For one check at a time, by any number of threads.
 */
public final class KeptOutcomes {
  private final KeptForm.Stored stored;
  private final Map<FileKey, byte[]> fresh = new ConcurrentHashMap<>();
  private final Set<FileKey> met = ConcurrentHashMap.newKeySet();
  private byte[] circumstances = {};
  private boolean usable;

  private KeptOutcomes(KeptForm.Stored stored) {
    this.stored = stored;
  }

  /** Nothing is kept yet. */
  public static KeptOutcomes none() {
    return new KeptOutcomes(KeptForm.NOTHING);
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
   * @param now outcomes that were kept under others are forgotten
   */
  @Internal
  public void start(Circumstances now) {
    circumstances = now.digest();
    usable = stored.madeUnder(circumstances);
    fresh.clear();
    met.clear();
  }

  /**
   * The outcome of a file.
   *
   * @param check finds it where it is not kept
   */
  @Internal
  public FileOutcome of(String path, byte[] bytes, Supplier<FileOutcome> check) {
    FileKey key = FileKey.of(path, bytes);
    FileOutcome known = usable ? known(key) : null;
    if (known != null) {
      met.add(key);
      return known;
    }
    FileOutcome outcome = check.get();
    // What kept the tool from its work may be gone next time.
    if (outcome.notifications().isEmpty()) {
      fresh.put(key, bytes(outcome));
    }
    return outcome;
  }

  private @Nullable FileOutcome known(FileKey key) {
    ByteArrayInputStream bytes = stored.find(key);
    if (bytes == null) {
      return null;
    }
    try {
      return OutcomeForm.read(new DataInputStream(bytes));
    } catch (IOException | RuntimeException damaged) {
      return null;
    }
  }

  private static byte[] bytes(FileOutcome outcome) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream(512);
    try {
      OutcomeForm.write(outcome, new DataOutputStream(bytes));
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return bytes.toByteArray();
  }

  /** Whether the check that was started last met anything that was not kept, or misses a file. */
  public boolean isChanged() {
    return !fresh.isEmpty() || met.size() < stored.size();
  }

  /** Writes the outcomes of the check that was started last. */
  public void write(OutputStream out) throws IOException {
    Map<FileKey, byte[]> all = new HashMap<>(fresh);
    for (FileKey key : met) {
      ByteArrayInputStream bytes = stored.find(key);
      if (bytes != null) {
        all.put(key, bytes.readAllBytes());
      }
    }
    KeptForm.write(circumstances, all, out);
  }
}
