package org.headhouse.linter.rules.serial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * MODBUS over Serial Line V1.02, section 2.5.1: a character in RTU mode has 11 bits, a start bit, 8
 * bits of data, a bit of parity and a stop bit; without parity it has two stop bits.
 */
class SerialFramingTest {
  private static final int BITS = 11;

  @ParameterizedTest
  @CsvSource({"even, 1", "even, 2", "odd, 1", "odd, 2", "none, 1", "none, 2"})
  void aCharacterHasElevenBits(String parity, int stopBits) {
    String text =
        Example.with(
            "parity: even, stop-bits: 1", "parity: " + parity + ", stop-bits: " + stopBits);
    int bits = 1 + 8 + (parity.equals("none") ? 0 : 1) + stopBits;
    List<String> lines = Checks.lines(text);
    if (bits == BITS) {
      assertThat(lines).isEmpty();
    } else {
      assertThat(lines)
          .singleElement()
          .asString()
          .contains(": warning: ", bits + "-bit characters", "[serial.framing]")
          .contains(stopBits == 1 ? " with 1 stop bit makes" : " with 2 stop bits makes")
          .contains("set all units and the file to stop-bits: " + (parity.equals("none") ? 2 : 1));
    }
  }
}
