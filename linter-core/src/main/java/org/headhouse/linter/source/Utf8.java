package org.headhouse.linter.source;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import org.headhouse.linter.stability.Internal;

/** Decodes files, and finds the first byte that is not UTF-8. */
@Internal
public final class Utf8 {
  private static final char BYTE_ORDER_MARK = '\uFEFF';
  private static final char REPLACEMENT = '\uFFFD';

  private Utf8() {}

  /** The result of decoding. */
  public sealed interface Decoded {
    /** The bytes are UTF-8. */
    record Text(SourceText text) implements Decoded {}

    /**
     * The bytes are not UTF-8.
     *
     * @param region where the first wrong byte is, in code points of what could be read
     * @param offset how many bytes precede it
     * @param value the wrong byte, 0 to 255
     */
    record Malformed(SourceText readable, Region region, int offset, int value)
        implements Decoded {}
  }

  /** Decodes the bytes of a file; a leading byte order mark is dropped. */
  public static Decoded decode(String path, byte[] bytes) {
    String text = new String(bytes, UTF_8);
    // The fast decoder writes U+FFFD for what it cannot read. Only a text that has this character,
    // which a file may also contain, is decoded again strictly.
    if (text.indexOf(REPLACEMENT) >= 0) {
      int valid = validLength(bytes);
      if (valid < bytes.length) {
        return malformed(path, bytes, valid);
      }
    }
    return new Decoded.Text(new SourceText(path, withoutMark(text), text.length() == bytes.length));
  }

  private static Decoded malformed(String path, byte[] bytes, int valid) {
    SourceText readable = new SourceText(path, withoutMark(new String(bytes, 0, valid, UTF_8)));
    Region end = readable.at(readable.text().length());
    return new Decoded.Malformed(readable, end, valid, bytes[valid] & 0xFF);
  }

  private static int validLength(byte[] bytes) {
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(8192);
    var decoder =
        UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    while (true) {
      CoderResult result = decoder.decode(in, out, true);
      if (!result.isOverflow()) {
        return in.position();
      }
      out.clear();
    }
  }

  private static String withoutMark(String text) {
    return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
  }
}
