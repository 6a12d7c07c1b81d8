package org.headhouse.linter.cache;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** Every Java platform has SHA-256. */
final class Digests {
  private Digests() {}

  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("this Java has no SHA-256", impossible);
    }
  }
}
