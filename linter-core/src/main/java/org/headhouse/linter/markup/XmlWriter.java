package org.headhouse.linter.markup;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes elements of XML, each value escaped for its place; characters that XML 1.0 cannot hold
 * become U+FFFD. Names of elements and of attributes are the program's own and are taken as they
 * are.
 *
 * <p>What comes out also reads the same inside HTML.
 */
public final class XmlWriter {
  private static final int REPLACEMENT = 0xFFFD;

  private final StringBuilder out = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /**
   * Starts an element.
   *
   * @param attributes names and values in turn
   */
  public XmlWriter start(String name, String... attributes) {
    tag(name, attributes);
    out.append('>');
    open.push(name);
    return this;
  }

  /** Ends the element that was started last. */
  public XmlWriter end() {
    out.append("</").append(open.pop()).append('>');
    return this;
  }

  /** An element without content. */
  public XmlWriter empty(String name, String... attributes) {
    tag(name, attributes);
    out.append("/>");
    return this;
  }

  /** An element with nothing but text in it. */
  public XmlWriter element(String name, String text, String... attributes) {
    return start(name, attributes).text(text).end();
  }

  /** Text between tags. */
  public XmlWriter text(String text) {
    append(text, false);
    return this;
  }

  /** A line break between elements, for people who compare two texts. */
  public XmlWriter newLine() {
    out.append('\n');
    return this;
  }

  private void tag(String name, String... attributes) {
    if (attributes.length % 2 != 0) {
      throw new IllegalArgumentException("an attribute without a value");
    }
    out.append('<').append(name);
    for (int i = 0; i < attributes.length; i += 2) {
      out.append(' ').append(attributes[i]).append("=\"");
      append(attributes[i + 1], true);
      out.append('"');
    }
  }

  /** In an attribute a line break or a tab would be read as a space. */
  private void append(String text, boolean inAttribute) {
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append(inAttribute ? "&quot;" : "\"");
        case '\r' -> out.append("&#13;");
        case '\n' -> out.append(inAttribute ? "&#10;" : "\n");
        case '\t' -> out.append(inAttribute ? "&#9;" : "\t");
        default -> out.appendCodePoint(isAllowed(c) ? c : REPLACEMENT);
      }
    }
  }

  /** The production Char of XML 1.0, but for tabs and line breaks. */
  private static boolean isAllowed(int c) {
    return (c >= 0x20 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD) || c >= 0x10000;
  }

  /** What was written since the last call, so that a long text need not be held as a whole. */
  public String take() {
    String text = out.toString();
    out.setLength(0);
    return text;
  }

  /**
   * The end of what was written, or all of it.
   *
   * @throws IllegalStateException where an element is not ended
   */
  public String finish() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("not ended: " + open);
    }
    return take();
  }
}
