package org.headhouse.linter.check;

import java.util.List;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.source.Utf8;
import org.headhouse.linter.yaml.Document;
import org.headhouse.linter.yaml.YamlReader;

/** From the bytes of a file to its tree. */
final class SourceDecoder {
  private SourceDecoder() {}

  static Document read(String path, byte[] bytes, Limits limits) {
    if (bytes.length > limits.bytes()) {
      return unread(new SourceText(path, ""), tooLarge(limits));
    }
    Utf8.Decoded decoded = Utf8.decode(path, bytes);
    if (decoded instanceof Utf8.Decoded.Malformed malformed) {
      return unread(malformed.readable(), notUtf8(malformed));
    }
    return new YamlReader(limits).read(((Utf8.Decoded.Text) decoded).text());
  }

  private static Document unread(SourceText source, Finding finding) {
    return new Document(source, null, List.of(), List.of(finding));
  }

  private static Finding tooLarge(Limits limits) {
    return Finding.of(
        "file.too-large",
        Region.START_OF_FILE,
        new Message(
            "the file is larger than " + limits.bytes() + " bytes",
            "a definition is never that large, so the file is not read",
            "split it, or remove whatever does not belong here"));
  }

  private static Finding notUtf8(Utf8.Decoded.Malformed malformed) {
    boolean wide = malformed.offset() == 0 && malformed.value() >= 0xFE;
    return Finding.of(
        "file.encoding",
        malformed.region(),
        new Message(
            "byte "
                + malformed.offset()
                + " (hexadecimal "
                + Integer.toHexString(malformed.value())
                + ") is not UTF-8",
            wide ? "the file looks like UTF-16, and is not read" : "the file is not read",
            "save the file as UTF-8"));
  }
}
