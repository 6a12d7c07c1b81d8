package org.headhouse.linter.cache;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import org.headhouse.linter.stability.Internal;

/** All that an outcome depends on besides its file. */
@Internal
public final class Circumstances {
  private final MessageDigest all = Digests.sha256();

  /** One thing more that it depends on, as the text that tells it from any other. */
  public Circumstances with(String thing) {
    return with(thing.getBytes(UTF_8));
  }

  /** One thing more that it depends on. */
  public Circumstances with(byte[] thing) {
    all.update(ByteBuffer.allocate(Integer.BYTES).putInt(thing.length).array());
    all.update(thing);
    return this;
  }

  byte[] digest() {
    return all.digest();
  }
}
