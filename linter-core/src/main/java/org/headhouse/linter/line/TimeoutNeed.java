package org.headhouse.linter.line;

import org.headhouse.linter.stability.Internal;

/**
 * How long software must wait for an answer at least, with its parts (from MODBUS over Serial Line
 * V1.02 §2.4.1 and the Application Protocol V1.1b3 §6.3; computed).
 *
 * @param charactersSeconds request and answer
 * @param silenceSeconds t3.5 after each
 * @param processingSeconds the longest that any unit takes before it answers
 * @param latencySeconds what the converter adds
 * @param otherSeconds the longest other transaction, which the head unit ends first; 0 where the
 *     software is on the line itself
 */
public record TimeoutNeed(
    double charactersSeconds,
    double silenceSeconds,
    double processingSeconds,
    double latencySeconds,
    double otherSeconds) {

  @Internal
  public TimeoutNeed {
    Require.notNegative(processingSeconds, "processing time");
    Require.notNegative(latencySeconds, "latency");
    Require.notNegative(otherSeconds, "other transaction");
  }

  /**
   * What one request needs; more than 125 registers are asked for by several, of which the longest
   * counts.
   *
   * @param registers how many 16-bit registers of each zone, at least 1
   */
  public static TimeoutNeed of(
      SerialFormat serial,
      int registers,
      double processingSeconds,
      double latencySeconds,
      double otherSeconds) {
    Require.positive(registers, "registers of a poll");
    int asked = Math.min(registers, FrameLengths.MOST_REGISTERS_READ);
    return new TimeoutNeed(
        serial.frameSeconds(FrameLengths.READ_REQUEST_BYTES + FrameLengths.readAnswerBytes(asked)),
        2 * serial.silenceSeconds(),
        processingSeconds,
        latencySeconds,
        otherSeconds);
  }

  /** The sum of all. */
  public double totalSeconds() {
    return charactersSeconds + silenceSeconds + processingSeconds + latencySeconds + otherSeconds;
  }
}
