package org.headhouse.linter.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The lengths that the timing counts against frames that stand in print. */
class PrintedFramesTest {

  /**
   * Frames of MODBUS Application Protocol V1.1b3: read three registers, its answer, write one
   * register. {@code 02 07} with {@code 41 12}: MODBUS over Serial Line V1.02, appendix B (read).
   * The check at the end shows that a frame is printed whole.
   */
  @ParameterizedTest
  @CsvSource({
    "11 03 00 6B 00 03 76 87, 8",
    "11 03 06 02 2B 00 00 00 64 C8 BA, 11",
    "11 06 00 01 00 03 9A 9B, 8",
    "02 07 41 12, 4",
  })
  void printedFramesEndWithTheirCheck(String frame, int bytes) {
    byte[] printed = HexFormat.ofDelimiter(" ").parseHex(frame);
    assertThat(printed).hasSize(bytes);
    int check = crc(printed, bytes - 2);
    assertThat(printed[bytes - 2]).isEqualTo((byte) check);
    assertThat(printed[bytes - 1]).isEqualTo((byte) (check >> 8));
  }

  @Test
  void countedLengthsAreThoseOfTheProtocol() {
    assertThat(FrameLengths.READ_REQUEST_BYTES).isEqualTo(8);
    assertThat(FrameLengths.readAnswerBytes(3)).isEqualTo(11);
    assertThat(FrameLengths.readAnswerBytes(10)).isEqualTo(25);
    assertThat(FrameLengths.writeSeveralRequestBytes(2)).isEqualTo(13);
  }

  /** MODBUS over Serial Line V1.02 §2.5.1 (read): a frame has at most 256 bytes. */
  @Test
  void theLongestFramesStayWithin256Bytes() {
    assertThat(FrameLengths.readAnswerBytes(125)).isEqualTo(255);
    assertThat(FrameLengths.writeSeveralRequestBytes(123)).isEqualTo(255);
    for (int registers : new int[] {0, 126}) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> FrameLengths.readAnswerBytes(registers));
    }
    for (int registers : new int[] {0, 124}) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> FrameLengths.writeSeveralRequestBytes(registers));
    }
  }

  /** MODBUS over Serial Line V1.02, appendix B: polynomial A001 from FFFF, low byte first. */
  private static int crc(byte[] frame, int length) {
    int check = 0xFFFF;
    for (int at = 0; at < length; at++) {
      check ^= frame[at] & 0xFF;
      for (int bit = 0; bit < 8; bit++) {
        check = (check & 1) == 0 ? check >> 1 : (check >> 1) ^ 0xA001;
      }
    }
    return check;
  }
}
