package org.headhouse.linter.report.sheet;

import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Parity;
import org.jspecify.annotations.Nullable;

/** The settings of the serial line in one phrase, the same on every card. */
final class SerialWords {
  private SerialWords() {}

  static String of(@Nullable LineSettings line) {
    if (line == null) {
      return PlainText.NOT_WRITTEN;
    }
    String baud =
        line.baud().optional().map(rate -> rate + " bit/s").orElse("rate " + PlainText.NOT_WRITTEN);
    String parity =
        line.parity()
            .optional()
            .map(word -> word == Parity.NONE ? "no parity" : word.word() + " parity")
            .orElse("parity " + PlainText.NOT_WRITTEN);
    String stop =
        line.stopBits()
            .optional()
            .map(bits -> bits + (bits == 1 ? " stop bit" : " stop bits"))
            .orElse("stop bits " + PlainText.NOT_WRITTEN);
    return baud + ", 8 data bits, " + parity + ", " + stop;
  }
}
