package org.headhouse.linter.source;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.headhouse.linter.stability.Internal;

/** The digest SHA-256, which every Java platform has. */
@Internal
public final class Sha256 {
  private Sha256() {}

  /** The digest of the parts, one after the other: 32 bytes. */
  public static byte[] of(byte[]... parts) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      for (byte[] part : parts) {
        digest.update(part);
      }
      return digest.digest();
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java platform has SHA-256", impossible);
    }
  }

  /** The digest in hexadecimal: 64 lower-case digits. */
  public static String hex(byte[] bytes) {
    return HexFormat.of().formatHex(of(bytes));
  }
}
