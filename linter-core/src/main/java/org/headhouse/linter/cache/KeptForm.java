package org.headhouse.linter.cache;

import java.io.ByteArrayInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.zip.CRC32C;
import java.util.zip.CheckedOutputStream;
import org.jspecify.annotations.Nullable;

/**
 * Many outcomes as bytes: a mark, the circumstances, the number of outcomes, then of each its key,
 * its length and its bytes, and at the end the checksum of all that.
 */
final class KeptForm {
  /** Says what follows, and in which form; another form gets another number. */
  private static final long MARK = 0x4865_6164_486f_0001L;

  private static final int DIGEST_BYTES = 32;
  private static final int HEAD_BYTES = Long.BYTES + DIGEST_BYTES + Integer.BYTES;

  static final Stored NOTHING = new Stored(new byte[0], new byte[0], Map.of());

  private KeptForm() {}

  /**
   * Outcomes in the bytes of their file; none is made before it is asked for.
   *
   * @param starts where the length of each stands
   */
  @SuppressWarnings("ArrayRecordComponent") // Never compared.
  record Stored(byte[] bytes, byte[] circumstances, Map<FileKey, Integer> starts) {

    boolean madeUnder(byte[] others) {
      return Arrays.equals(circumstances, others);
    }

    int size() {
      return starts.size();
    }

    @Nullable ByteArrayInputStream find(FileKey key) {
      Integer start = starts.get(key);
      return start == null
          ? null
          : new ByteArrayInputStream(
              bytes, start + Integer.BYTES, ByteBuffer.wrap(bytes).getInt(start));
    }
  }

  /** What is in some bytes; nothing where they are damaged or something else. */
  static Stored read(byte[] bytes) {
    if (bytes.length < HEAD_BYTES + Long.BYTES) {
      return NOTHING;
    }
    int end = bytes.length - Long.BYTES;
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CRC32C sum = new CRC32C();
    sum.update(bytes, 0, end);
    if (in.getLong() != MARK || in.getLong(end) != sum.getValue()) {
      return NOTHING;
    }
    byte[] circumstances = new byte[DIGEST_BYTES];
    in.get(circumstances);
    try {
      return new Stored(bytes, circumstances, starts(in.limit(end)));
    } catch (RuntimeException somethingElse) {
      return NOTHING;
    }
  }

  private static Map<FileKey, Integer> starts(ByteBuffer in) {
    int number = in.getInt();
    Map<FileKey, Integer> starts = new HashMap<>();
    for (int i = 0; i < number; i++) {
      FileKey key = new FileKey(in.getLong(), in.getLong());
      starts.put(key, in.position());
      int length = in.getInt();
      in.position(in.position() + length);
    }
    return starts;
  }

  static void write(byte[] circumstances, Map<FileKey, byte[]> outcomes, OutputStream out)
      throws IOException {
    CheckedOutputStream checked = new CheckedOutputStream(out, new CRC32C());
    DataOutputStream data = new DataOutputStream(checked);
    data.writeLong(MARK);
    data.write(circumstances);
    data.writeInt(outcomes.size());
    for (Map.Entry<FileKey, byte[]> outcome : outcomes.entrySet()) {
      data.writeLong(outcome.getKey().first());
      data.writeLong(outcome.getKey().second());
      data.writeInt(outcome.getValue().length);
      data.write(outcome.getValue());
    }
    data.writeLong(checked.getChecksum().getValue());
    data.flush();
  }
}
