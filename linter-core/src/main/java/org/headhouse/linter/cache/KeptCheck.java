package org.headhouse.linter.cache;

import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import org.headhouse.linter.check.FileOutcome;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/** One check that uses kept outcomes and finds new ones; for any number of threads. */
@Internal
public final class KeptCheck {
  private final KeptOutcomes kept;
  private final byte[] circumstances;
  private final Stored before;
  private final Map<FileKey, Stored.Slice> known;
  private final Map<FileKey, Stored.Slice> met = new ConcurrentHashMap<>();

  /** One for each thread: looking one up for each file takes a good part of what it saves. */
  private final ThreadLocal<MessageDigest> digests = ThreadLocal.withInitial(Digests::sha256);

  /**
   * @param before what is kept; not used where it was found under other circumstances
   */
  KeptCheck(KeptOutcomes kept, byte[] circumstances, Stored before) {
    this.kept = kept;
    this.circumstances = circumstances;
    this.before = before;
    this.known = before.madeUnder(circumstances) ? before.outcomes() : Map.of();
  }

  /**
   * The outcome of a file.
   *
   * @param check finds it where it is not kept
   */
  public FileOutcome of(String path, byte[] bytes, Supplier<FileOutcome> check) {
    FileKey key = FileKey.of(path, bytes, digests.get());
    Stored.Slice slice = known.get(key);
    FileOutcome outcome = slice == null ? null : read(slice);
    if (slice != null && outcome != null) {
      met.put(key, slice);
      return outcome;
    }
    FileOutcome found = check.get();
    // What kept the tool from its work may be gone next time.
    if (found.notifications().isEmpty()) {
      met.put(key, Stored.Slice.of(bytes(found)));
    }
    return found;
  }

  /** Keeps what this check met instead of what was kept before. */
  public void end() {
    Stored next = new Stored(circumstances, new HashMap<>(met));
    kept.replace(next, !next.isSameAs(before));
  }

  private static @Nullable FileOutcome read(Stored.Slice slice) {
    try {
      return OutcomeForm.read(new DataInputStream(slice.open()));
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
}
