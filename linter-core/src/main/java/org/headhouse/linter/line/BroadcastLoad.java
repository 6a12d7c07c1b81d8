package org.headhouse.linter.line;

/**
 * What the head unit sends to all units, again and again.
 *
 * @param registers how many 16-bit registers, at least 1
 * @param periodSeconds from one broadcast to the next
 * @param turnaroundSeconds the pause after a broadcast, in which the units take it in
 */
public record BroadcastLoad(int registers, double periodSeconds, double turnaroundSeconds) {

  /** The least of the 100 to 200 ms of MODBUS over Serial Line V1.02 §2.4.1. */
  public static final double TURNAROUND_SECONDS = 0.1;

  public BroadcastLoad {
    Require.positive(registers, "registers of the broadcast");
    Require.positive(periodSeconds, "period of the broadcast");
    Require.notNegative(turnaroundSeconds, "turnaround delay");
  }

  /**
   * How long one broadcast holds the line: {@code (9 + 2N) characters + t3.5 + turnaround} (MODBUS
   * over Serial Line V1.02 §2.4.1, Application Protocol V1.1b3 §6.12). More than 123 registers need
   * several frames, each with its own silence and turnaround.
   */
  public double seconds(SerialFormat serial) {
    return FrameLengths.secondsOfParts(
        registers,
        FrameLengths.MOST_REGISTERS_WRITTEN,
        part ->
            serial.frameSeconds(FrameLengths.writeSeveralRequestBytes(part))
                + serial.silenceSeconds()
                + turnaroundSeconds);
  }

  /**
   * From the first bit of a broadcast to the last: {@code (9 + 2N) characters}, and where it needs
   * several frames also the silences and turnarounds between them. A unit has the readings then.
   */
  public double frameSeconds(SerialFormat serial) {
    return seconds(serial) - serial.silenceSeconds() - turnaroundSeconds;
  }
}
