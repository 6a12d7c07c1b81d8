package org.headhouse.linter.cache;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Map;

/**
 * Outcomes as bytes; none is made of them before it is asked for.
 *
 * @param circumstances the digest of those that they were found under
 */
@SuppressWarnings("ArrayRecordComponent") // Never compared but by the methods below.
record Stored(byte[] circumstances, Map<FileKey, Slice> outcomes) {
  static final Stored NOTHING = new Stored(new byte[KeptForm.DIGEST_BYTES], Map.of());

  boolean madeUnder(byte[] others) {
    return Arrays.equals(circumstances, others);
  }

  /** Whether both say the same of the same files: a slice that was used is the very same. */
  boolean isSameAs(Stored other) {
    return madeUnder(other.circumstances) && outcomes.equals(other.outcomes);
  }

  /** The bytes of one outcome among those of others; equal to itself only. */
  @SuppressWarnings("ArrayRecordComponent") // Not compared by its parts.
  record Slice(byte[] bytes, int start, int length) {
    static Slice of(byte[] bytes) {
      return new Slice(bytes, 0, bytes.length);
    }

    InputStream open() {
      return new ByteArrayInputStream(bytes, start, length);
    }

    @Override
    public boolean equals(Object other) {
      return this == other;
    }

    @Override
    public int hashCode() {
      return System.identityHashCode(this);
    }
  }
}
