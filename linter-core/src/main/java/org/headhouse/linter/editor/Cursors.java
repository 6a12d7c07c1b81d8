package org.headhouse.linter.editor;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.jspecify.annotations.Nullable;

/**
 * What the word at the cursor may be. A text is seldom YAML while a word of it is missing, so a
 * mark takes the place of the word: as a value, then as a key, in the whole text, else in what
 * precedes.
 *
 * @param start where the word begins in the text
 * @param end where it ends
 * @param asKey the way to the mark as a key, or null where it cannot be one
 * @param asValue the way to the mark as a value, or null likewise
 */
record Cursors(int start, int end, @Nullable Guess asKey, @Nullable Guess asValue) {
  private static final String MARK = "zq9cursor";
  private static final String ENDS_OF_A_WORD = ",]}#";

  /** A way to the mark, in the tree of a text that has it. */
  record Guess(YamlPath path, Node.Valued root) {}

  static Cursors of(Positions positions, int offset) {
    String text = positions.source().text();
    int start = start(text, positions.startOfLine(offset), offset);
    int end = end(text, offset, positions.endOfLine(offset));
    boolean colon = text.startsWith(":", end);
    String head = text.substring(0, start);
    String rest = text.substring(end);
    String line = text.substring(positions.startOfLine(offset), start);
    List<String> tails = new ArrayList<>(List.of(rest, closing(line) + "\n"));
    Guess key = null;
    Guess value = null;
    for (String tail : tails) {
      if (value == null && !(colon && tail.equals(rest))) {
        value = guess(head + MARK + tail, start, false);
      }
      if (key == null) {
        key = guess(head + MARK + (colon && tail.equals(rest) ? "" : ": ") + tail, start, true);
      }
    }
    return new Cursors(start, end, key, value);
  }

  private static int start(String text, int startOfLine, int offset) {
    int start = startOfLine;
    while (start < offset && (text.charAt(start) == ' ' || isDash(text, start, offset))) {
      start++;
    }
    for (int i = start; i < offset; i++) {
      char c = text.charAt(i);
      boolean colon = c == ':' && i + 1 < offset && text.charAt(i + 1) == ' ';
      if (c == '[' || c == '{' || c == ',' || colon) {
        start = i + 1;
      }
    }
    while (start < offset && text.charAt(start) == ' ') {
      start++;
    }
    return start;
  }

  private static boolean isDash(String text, int index, int offset) {
    return text.charAt(index) == '-' && index + 1 <= offset && text.startsWith(" ", index + 1);
  }

  private static int end(String text, int offset, int endOfLine) {
    int end = offset;
    while (end < endOfLine
        && ENDS_OF_A_WORD.indexOf(text.charAt(end)) < 0
        && text.charAt(end) != ':') {
      end++;
    }
    while (end > offset && text.charAt(end - 1) == ' ') {
      end--;
    }
    return end;
  }

  /** What closes the brackets that a line opens. */
  private static String closing(String line) {
    StringBuilder open = new StringBuilder();
    for (int i = 0; i < line.length(); i++) {
      switch (line.charAt(i)) {
        case '[' -> open.append(']');
        case '{' -> open.append('}');
        case ']', '}' -> open.setLength(Math.max(0, open.length() - 1));
        default -> {}
      }
    }
    return open.reverse().toString();
  }

  private static @Nullable Guess guess(String text, int start, boolean isKey) {
    SourceText source = new SourceText("", text);
    Node.Valued root = YamlPath.tree(source);
    if (root == null) {
      return null;
    }
    Region at = source.at(start + 1);
    YamlPath path = YamlPath.at(root, at);
    boolean found =
        path != null
            && path.isKey() == isKey
            && path.node() instanceof Scalar scalar
            && scalar.text().equals(MARK);
    return found && path != null ? new Guess(path, root) : null;
  }
}
