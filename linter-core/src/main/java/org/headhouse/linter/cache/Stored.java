package org.headhouse.linter.cache;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
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

  /** The bytes of one outcome among those of others. */
  static final class Slice {
    private final byte[] bytes;
    private final int start;
    private final int length;

    Slice(byte[] bytes, int start, int length) {
      this.bytes = bytes;
      this.start = start;
      this.length = length;
    }

    static Slice of(byte[] bytes) {
      return new Slice(bytes, 0, bytes.length);
    }

    InputStream open() {
      return new ByteArrayInputStream(bytes, start, length);
    }

    int length() {
      return length;
    }

    void write(OutputStream out) throws IOException {
      out.write(bytes, start, length);
    }
  }
}
