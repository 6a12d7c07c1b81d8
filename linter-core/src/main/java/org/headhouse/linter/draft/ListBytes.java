package org.headhouse.linter.draft;

import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.source.Utf8;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/** From the bytes of a list to its text. */
@Internal
public final class ListBytes {
  private ListBytes() {}

  /**
   * A text, or why there is none.
   *
   * @param refused null where the text can be read
   */
  public record Read(SourceText source, Draft.@Nullable Refused refused) {}

  /** Reads bytes in UTF-8, with or without a byte order mark. */
  public static Read read(String path, byte[] bytes, Limits limits) {
    if (bytes.length > limits.bytes()) {
      Faults faults = new Faults(new SourceText(path, ""));
      faults.add(
          Region.START_OF_FILE,
          "the file is larger than " + limits.bytes() + " bytes",
          "no list of units is as long, and the file is not read",
          "write one row for each unit of one line");
      return new Read(new SourceText(path, ""), faults.refused());
    }
    Utf8.Decoded decoded = Utf8.decode(path, bytes);
    return decoded instanceof Utf8.Decoded.Malformed malformed
        ? new Read(malformed.readable(), notUtf8(malformed))
        : new Read(((Utf8.Decoded.Text) decoded).text(), null);
  }

  private static Draft.Refused notUtf8(Utf8.Decoded.Malformed malformed) {
    Faults faults = new Faults(malformed.readable());
    faults.add(
        malformed.region(),
        "byte "
            + malformed.offset()
            + " (hexadecimal "
            + Integer.toHexString(malformed.value())
            + ") is not UTF-8",
        "letters with accents would come out wrong, and the file is not read",
        "save the list as CSV in UTF-8");
    return faults.refused();
  }
}
