package org.headhouse.linter.markup;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes elements of XML into one text, each value escaped for where it stands. Names of elements
 * and of attributes are the program's own and are taken as they are.
 *
 * <p>What comes out also reads the same inside HTML.
 */
public final class XmlWriter {
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
    append(XmlText.of(text), false);
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
      append(XmlText.of(attributes[i + 1]), true);
      out.append('"');
    }
  }

  /** In an attribute a line break or a tab would be read as a space. */
  private void append(String text, boolean inAttribute) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append(inAttribute ? "&quot;" : "\"");
        case '\r' -> out.append("&#13;");
        case '\n' -> out.append(inAttribute ? "&#10;" : "\n");
        case '\t' -> out.append(inAttribute ? "&#9;" : "\t");
        default -> out.append(c);
      }
    }
  }

  /**
   * What was written.
   *
   * @throws IllegalStateException where an element is not ended
   */
  public String finish() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("not ended: " + open);
    }
    return out.toString();
  }
}
