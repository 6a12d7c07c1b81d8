package org.headhouse.linter.cache;

import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.util.HashMap;
import java.util.Map;
import java.util.zip.CRC32C;
import java.util.zip.CheckedOutputStream;

/**
 * Many outcomes as bytes: a mark, the circumstances, the number of outcomes, then of each its key,
 * its length and its bytes, and at the end the checksum of all that.
 */
final class KeptForm {
  /** Says what follows, and in which form; another form gets another number. */
  private static final long MARK = 0x4865_6164_486f_0001L;

  static final int DIGEST_BYTES = 32;
  private static final int HEAD_BYTES = Long.BYTES + DIGEST_BYTES + Integer.BYTES;

  /** Besides the bytes of each outcome: its key and its length. */
  private static final int BYTES_OF_ONE = 2 * Long.BYTES + Integer.BYTES;

  private KeptForm() {}

  /** What is in some bytes; nothing where they are damaged or something else. */
  static Stored read(byte[] bytes) {
    if (bytes.length < HEAD_BYTES + Long.BYTES) {
      return Stored.NOTHING;
    }
    int end = bytes.length - Long.BYTES;
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CRC32C sum = new CRC32C();
    sum.update(bytes, 0, end);
    if (in.getLong() != MARK || in.getLong(end) != sum.getValue()) {
      return Stored.NOTHING;
    }
    byte[] circumstances = new byte[DIGEST_BYTES];
    in.get(circumstances);
    try {
      return new Stored(circumstances, outcomes(bytes, in.limit(end)));
    } catch (RuntimeException somethingElse) {
      return Stored.NOTHING;
    }
  }

  private static Map<FileKey, Stored.Slice> outcomes(byte[] bytes, ByteBuffer in) {
    int number = atMost(in.remaining() / BYTES_OF_ONE, in.getInt());
    Map<FileKey, Stored.Slice> outcomes = new HashMap<>();
    for (int i = 0; i < number; i++) {
      FileKey key = new FileKey(in.getLong(), in.getLong());
      int length = atMost(in.remaining(), in.getInt());
      outcomes.put(key, new Stored.Slice(bytes, in.position(), length));
      in.position(in.position() + length);
    }
    return outcomes;
  }

  private static int atMost(int most, int number) {
    if (number < 0 || number > most) {
      throw new IllegalArgumentException("no such number stands here");
    }
    return number;
  }

  static long size(Stored stored) {
    long size = HEAD_BYTES + Long.BYTES;
    for (Stored.Slice slice : stored.outcomes().values()) {
      size += BYTES_OF_ONE + slice.length();
    }
    return size;
  }

  static void write(Stored stored, OutputStream out) throws IOException {
    CheckedOutputStream checked = new CheckedOutputStream(out, new CRC32C());
    DataOutputStream data = new DataOutputStream(checked);
    data.writeLong(MARK);
    data.write(stored.circumstances());
    data.writeInt(stored.outcomes().size());
    for (Map.Entry<FileKey, Stored.Slice> outcome : stored.outcomes().entrySet()) {
      Stored.Slice slice = outcome.getValue();
      data.writeLong(outcome.getKey().first());
      data.writeLong(outcome.getKey().second());
      data.writeInt(slice.length());
      slice.write(data);
    }
    data.writeLong(checked.getChecksum().getValue());
    data.flush();
  }
}
