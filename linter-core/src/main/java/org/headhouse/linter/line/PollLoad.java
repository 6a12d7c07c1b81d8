package org.headhouse.linter.line;

/**
 * How units or equipment are read over the serial line, by supervision or the head unit. Polls over
 * Ethernet do not load it and have no place here.
 *
 * @param registers how many 16-bit registers of each zone, at least 1
 * @param zones how many zones are polled once a period, at least 1
 * @param periodSeconds from one round of polls to the next
 * @param processingSeconds from a request to its answer: what the unit takes, and what a converter
 *     adds
 * @param timeoutSeconds how long an answer is waited for
 * @param retries how often a request without answer is sent again
 */
public record PollLoad(
    int registers,
    int zones,
    double periodSeconds,
    double processingSeconds,
    double timeoutSeconds,
    int retries) {

  /** What a unit takes to answer (common practice, no source). */
  public static final double PROCESSING_SECONDS = 0.02;

  /** How long supervision waits where no timeout is written (common practice, no source). */
  public static final double USUAL_TIMEOUT_SECONDS = 1;

  /** How often it asks again where no number is written (common practice, no source). */
  public static final int USUAL_RETRIES = 1;

  public PollLoad {
    Require.positive(registers, "registers of a poll");
    Require.positive(zones, "zones");
    Require.positive(periodSeconds, "period of the polls");
    Require.notNegative(processingSeconds, "processing time");
    Require.positive(timeoutSeconds, "timeout");
    Require.notNegative(retries, "retries");
  }

  /**
   * The poll of one zone: {@code (8 + 5 + 2N) characters + 2 · t3.5 + processing} (assembled from
   * MODBUS over Serial Line V1.02 and Application Protocol V1.1b3 §6.3). More than 125 registers
   * need several requests, each with all of its overhead.
   */
  public double seconds(SerialFormat serial) {
    return FrameLengths.secondsOfParts(
        registers,
        FrameLengths.MOST_REGISTERS_READ,
        part ->
            serial.exchangeSeconds(
                    FrameLengths.READ_REQUEST_BYTES, FrameLengths.readAnswerBytes(part))
                + processingSeconds);
  }

  /** The share of the time that the polls take, all units answering. */
  public double share(SerialFormat serial) {
    return zones * seconds(serial) / periodSeconds;
  }

  /**
   * The poll of a zone that is silent: {@code timeout · (1 + retries) + 8 characters} (MODBUS over
   * Serial Line V1.02 §2.4.1: an absent unit costs a timeout each try). The request is counted
   * once; its repetitions are a few milliseconds beside timeouts of a second and more. The first
   * request without answer ends the poll.
   */
  public double silentSeconds(SerialFormat serial) {
    return timeoutSeconds * (1 + retries) + serial.frameSeconds(FrameLengths.READ_REQUEST_BYTES);
  }

  /**
   * The longest that a poll of one zone can hold the line.
   *
   * <p>With a unit that is silent, or falls silent before the last request, that is all requests
   * but the last with their answers, and the last one sent again and again: {@code (1 + retries) ·
   * (8 characters + timeout)}.
   *
   * @param oneSilent whether one polled unit is silent
   */
  public double longestSeconds(SerialFormat serial, boolean oneSilent) {
    double answered = seconds(serial);
    if (!oneSilent) {
      return answered;
    }
    int lastRegisters = (registers - 1) % FrameLengths.MOST_REGISTERS_READ + 1;
    PollLoad last =
        new PollLoad(
            lastRegisters, zones, periodSeconds, processingSeconds, timeoutSeconds, retries);
    double repeated =
        (1 + retries) * (serial.frameSeconds(FrameLengths.READ_REQUEST_BYTES) + timeoutSeconds);
    return Math.max(answered, answered - last.seconds(serial) + repeated);
  }
}
