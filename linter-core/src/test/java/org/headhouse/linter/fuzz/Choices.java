package org.headhouse.linter.fuzz;

import java.util.random.RandomGenerator;

/**
 * Bytes as choices, for generators of texts: a changed byte is another choice, so a fuzzer steers
 * what is generated. Once the bytes are used up, each choice is the first one.
 */
final class Choices implements RandomGenerator {
  private final byte[] bytes;
  private int at;

  Choices(byte[] bytes) {
    this.bytes = bytes;
  }

  private int next() {
    return at < bytes.length ? bytes[at++] & 0xFF : 0;
  }

  @Override
  public int nextInt(int bound) {
    return (bound <= 256 ? next() : next() << 8 | next()) % bound;
  }

  @Override
  public boolean nextBoolean() {
    return (next() & 1) != 0;
  }

  @Override
  public long nextLong() {
    long value = 0;
    for (int i = 0; i < Long.BYTES; i++) {
      value = value << Byte.SIZE | next();
    }
    return value;
  }
}
