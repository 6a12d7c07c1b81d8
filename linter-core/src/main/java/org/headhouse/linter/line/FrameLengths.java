package org.headhouse.linter.line;

import java.util.function.IntToDoubleFunction;

/**
 * Bytes of RTU frames, with address and check (MODBUS Application Protocol V1.1b3 §6.3, §6.4,
 * §6.12).
 */
final class FrameLengths {

  /** Read holding or input registers (functions 3 and 4), the request. */
  static final int READ_REQUEST_BYTES = 8;

  /** How many registers one request can read. */
  static final int MOST_REGISTERS_READ = 125;

  /** How many registers one request can write. */
  static final int MOST_REGISTERS_WRITTEN = 123;

  private FrameLengths() {}

  /** Read registers (functions 3 and 4), the answer: {@code 5 + 2N}. */
  static int readAnswerBytes(int registers) {
    return 5 + 2 * within(registers, MOST_REGISTERS_READ);
  }

  /** Write several registers (function 16), the request: {@code 9 + 2N}. */
  static int writeSeveralRequestBytes(int registers) {
    return 9 + 2 * within(registers, MOST_REGISTERS_WRITTEN);
  }

  /**
   * The sum over registers cut into as few parts as can be: full ones, then the rest.
   *
   * @param seconds what one part takes
   */
  static double secondsOfParts(int registers, int most, IntToDoubleFunction seconds) {
    int full = (registers - 1) / most;
    double rest = seconds.applyAsDouble(registers - full * most);
    return full == 0 ? rest : full * seconds.applyAsDouble(most) + rest;
  }

  private static int within(int registers, int most) {
    if (registers < 1 || registers > most) {
      throw new IllegalArgumentException("registers must be 1 to " + most + ": " + registers);
    }
    return registers;
  }
}
