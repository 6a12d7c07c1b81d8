package org.headhouse.linter.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SerialFormatTest {

  /** MODBUS over Serial Line V1.02 §2.5.1 (read): 11 bits; without parity two stop bits. */
  @ParameterizedTest
  @CsvSource({"true, 1, 11", "false, 2, 11", "false, 1, 10", "true, 2, 12"})
  void aCharacterHasItsBits(boolean parityBit, int stopBits, int expected) {
    assertThat(new SerialFormat(9600, parityBit, stopBits).characterBits()).isEqualTo(expected);
  }

  /** 1.146 ms at 9600 bit/s: quoted in the interface manual of an instrument maker. */
  @Test
  void aCharacterTakesItsTime() {
    assertThat(at(9600).characterSeconds()).isCloseTo(1.146e-3, within(0.0005e-3));
  }

  /**
   * MODBUS over Serial Line V1.02 §2.5.1.1 (read): 3.5 characters, above 19 200 bit/s fixed. The
   * milliseconds up to there are computed.
   */
  @ParameterizedTest
  @CsvSource({
    "1200, 32.083",
    "9600, 4.010",
    "19200, 2.005",
    "19201, 1.750",
    "38400, 1.750",
    "115200, 1.750",
  })
  void theSilenceIsThreeAndAHalfCharactersOrFixed(int baud, double expectedMillis) {
    assertThat(at(baud).silenceSeconds() * 1e3).isCloseTo(expectedMillis, within(0.0005));
  }

  /**
   * Computed from {@code T = (request + answer) · 11 / baud + 2 · t3.5}, with the frame lengths of
   * MODBUS Application Protocol V1.1b3.
   */
  @ParameterizedTest
  @CsvSource({
    "read 10,       8,  25,  9600,  45.833",
    "read 10,       8,  25, 19200,  22.917",
    "read 125,      8, 255,  9600, 309.375",
    "read 3,        8,  11,  9600,  29.792",
    "write 2 (16), 13,   8,  9600,  32.083",
    "write one,     8,   8,  9600,  26.354",
  })
  void anExchangeTakesItsTime(
      String what, int requestBytes, int answerBytes, int baud, double expectedMillis) {
    assertThat(at(baud).exchangeSeconds(requestBytes, answerBytes) * 1e3)
        .as(what)
        .isCloseTo(expectedMillis, within(0.0005));
  }

  private static SerialFormat at(int baud) {
    return new SerialFormat(baud, true, 1);
  }
}
