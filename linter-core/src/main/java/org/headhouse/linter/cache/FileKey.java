package org.headhouse.linter.cache;

import java.nio.ByteBuffer;
import java.security.MessageDigest;

/**
 * The name and the bytes of a file, as half of their SHA-256.
 *
 * <p>What a record does by itself is linked at its first use, which takes longer than to look up
 * some hundred files; so it is written out.
 */
record FileKey(long first, long second) {

  /**
   * @param digest of SHA-256, at its start; left there again
   */
  static FileKey of(String path, byte[] bytes, MessageDigest digest) {
    // Not as UTF-8, which has one sign for all halves of pairs of surrogates.
    ByteBuffer name = ByteBuffer.allocate(Integer.BYTES + Character.BYTES * path.length());
    name.putInt(path.length()).asCharBuffer().put(path);
    digest.update(name.array());
    ByteBuffer value = ByteBuffer.wrap(digest.digest(bytes));
    return new FileKey(value.getLong(), value.getLong());
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FileKey key && first == key.first && second == key.second;
  }

  @Override
  public int hashCode() {
    return Long.hashCode(first ^ second);
  }
}
