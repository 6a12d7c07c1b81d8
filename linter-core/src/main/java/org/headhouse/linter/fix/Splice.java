package org.headhouse.linter.fix;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Comparator;
import java.util.List;
import org.headhouse.linter.result.Replacement;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.source.Utf8;

/** Puts other text into regions of a file; all other bytes stay. */
public final class Splice {
  private Splice() {}

  /**
   * The bytes with some regions replaced.
   *
   * @param bytes UTF-8, with or without a byte order mark
   * @param replacements no two of them overlap or touch
   */
  public static byte[] apply(byte[] bytes, List<Replacement> replacements) {
    if (!(Utf8.decode("", bytes) instanceof Utf8.Decoded.Text decoded)) {
      throw new IllegalArgumentException("bytes that are no UTF-8 have no regions");
    }
    SourceText source = decoded.text();
    String text = source.text();
    StringBuilder spliced = new StringBuilder(text.length() + 64);
    int from = 0;
    for (Replacement one :
        replacements.stream().sorted(Comparator.comparing(Replacement::region)).toList()) {
      Region region = one.region();
      int start = source.offset(region.startLine(), region.startColumn());
      if (start < from) {
        throw new IllegalArgumentException("two replacements at " + region);
      }
      spliced.append(text, from, start).append(one.text());
      from = source.offset(region.endLine(), region.endColumn());
    }
    spliced.append(text, from, text.length());
    byte[] after = spliced.toString().getBytes(UTF_8);
    int mark = bytes.length - text.getBytes(UTF_8).length;
    byte[] all = new byte[mark + after.length];
    System.arraycopy(bytes, 0, all, 0, mark);
    System.arraycopy(after, 0, all, mark, after.length);
    return all;
  }

  /** Whether two regions share a character or an edge, so that their order would matter. */
  public static boolean touch(Region one, Region other) {
    return !isBefore(one, other) && !isBefore(other, one);
  }

  private static boolean isBefore(Region one, Region other) {
    return one.endLine() < other.startLine()
        || (one.endLine() == other.startLine() && one.endColumn() < other.startColumn());
  }
}
