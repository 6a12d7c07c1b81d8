package org.headhouse.linter.yaml;

import java.util.Optional;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;

/**
 * Finds a space of another kind in the indentation of a line, such as the no-break space that is
 * copied from a page or typed with a modifier key. YAML takes it for a letter.
 */
final class OtherSpaces {
  private static final int LONGEST_LINE = 200;
  private static final int NO_BREAK = 0xA0;

  private OtherSpaces() {}

  /** The finding for one of some lines, where it has such a space. */
  static Optional<Finding> in(SourceText source, int... lines) {
    for (int line : lines) {
      String text = line < 1 || line > source.lines() ? "" : source.line(line, LONGEST_LINE);
      int at = 0;
      while (at < text.length() && (text.charAt(at) == ' ' || text.charAt(at) == '-')) {
        at++;
      }
      if (at < text.length() && isOther(text.charAt(at))) {
        return Optional.of(finding(Region.onLine(line, at + 1, 1), text.charAt(at)));
      }
    }
    return Optional.empty();
  }

  /** Whether a character is a space, but not the one that YAML knows. */
  static boolean isOther(char c) {
    return c != ' ' && Character.getType(c) == Character.SPACE_SEPARATOR;
  }

  private static Finding finding(Region region, char c) {
    String name =
        c == NO_BREAK
            ? "a no-break space"
            : String.format("a space of another kind (U+%04X)", (int) c);
    return Finding.of(
        SyntaxFaults.SYNTAX,
        region,
        new Message(
            name + " is in the indentation",
            SyntaxFaults.NOT_READ,
            "delete it, and type ordinary spaces in its place"));
  }
}
