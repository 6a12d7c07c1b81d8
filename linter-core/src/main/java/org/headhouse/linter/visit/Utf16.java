package org.headhouse.linter.visit;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/** What some spreadsheets save as "Unicode text": UTF-16 behind a byte order mark. */
final class Utf16 {
  private Utf16() {}

  /** The same text in UTF-8; other bytes as they are. */
  static byte[] inUtf8(byte[] bytes) {
    int first = bytes.length < 2 ? 0 : (bytes[0] & 0xFF) << 8 | (bytes[1] & 0xFF);
    if (first != 0xFEFF && first != 0xFFFE) {
      return bytes;
    }
    try {
      return StandardCharsets.UTF_16
          .newDecoder()
          .decode(ByteBuffer.wrap(bytes))
          .toString()
          .getBytes(UTF_8);
    } catch (CharacterCodingException notUtf16) {
      return bytes;
    }
  }
}
