package org.headhouse.linter.yaml;

import java.util.Set;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;

/**
 * Finds the anchor and the tag before a node, and where the node itself starts.
 *
 * <p>The parser's start mark lies before both. Nodes come in the order of the text, so one pass
 * over it serves all of them.
 */
final class NodeProperties {
  /** The tags of the core schema; no site needs another. */
  private static final String CORE = "tag:yaml.org,2002:";

  private static final Set<String> CORE_TAGS =
      Set.of("str", "int", "float", "bool", "null", "map", "seq");

  private static final Found NONE = new Found(null, null, "", false, 0, 0);

  private final String text;
  private int codePoint;
  private int offset;

  NodeProperties(String text) {
    this.text = text;
  }

  /**
   * The properties found before a node.
   *
   * @param startLine where the node itself starts, or 0 where it has no properties
   */
  record Found(
      Node.@Nullable Anchor anchor,
      @Nullable Region foreignTag,
      String foreignTagText,
      boolean tagOfText,
      int startLine,
      int startColumn) {

    /** The region of a node without its properties. */
    Region from(NodeEvent event) {
      Region whole = ParserMarks.region(event);
      return startLine == 0
          ? whole
          : new Region(
              startLine,
              startColumn,
              Math.max(startLine, whole.endLine()),
              whole.endLine() > startLine
                  ? whole.endColumn()
                  : Math.max(startColumn, whole.endColumn()));
    }
  }

  Found of(NodeEvent event) {
    String tag = tag(event);
    return event.getAnchor() == null && tag == null ? NONE : scan(event, tag);
  }

  private static @Nullable String tag(NodeEvent event) {
    if (event instanceof ScalarEvent scalar) {
      return scalar.getTag();
    }
    return event instanceof CollectionStartEvent start ? start.getTag() : null;
  }

  private Found scan(NodeEvent event, @Nullable String tag) {
    moveTo(event.getStartMark().getIndex());
    int line = event.getStartMark().getLine() + 1;
    int column = event.getStartMark().getColumn() + 1;
    int at = offset;
    Region anchor = null;
    Region tagRegion = null;
    String tagText = "";
    String name = event.getAnchor();
    while (at < text.length()) {
      char c = text.charAt(at);
      boolean isAnchor = c == '&' && anchor == null && name != null;
      if (isAnchor || (c == '!' && tagRegion == null && tag != null)) {
        int end = isAnchor ? at + 1 + name.length() : endOfTag(at);
        Region word = Region.onLine(line, column, text.codePointCount(at, end));
        if (isAnchor) {
          anchor = word;
        } else {
          tagRegion = word;
          tagText = text.substring(at, end);
        }
        at = end;
        column = word.endColumn();
      } else if (c == ' ' || c == '\t') {
        at++;
        column++;
      } else if (SourceText.isLineBreak(c) && hasContentBeyond(event, line)) {
        at += text.startsWith("\r\n", at) ? 2 : 1;
        line++;
        column = 1;
      } else if (c == '#') {
        at = endOfLine(at);
      } else {
        break;
      }
    }
    boolean foreign = tag != null && !isCore(tag);
    return new Found(
        name == null || anchor == null ? null : new Node.Anchor(name, anchor),
        foreign ? tagRegion : null,
        tagText,
        tag != null && (tag.equals(CORE + "str") || tag.equals("!")),
        line,
        column);
  }

  /** An empty scalar ends on the line of its anchor; anything else starts before it ends. */
  private static boolean hasContentBeyond(NodeEvent event, int line) {
    return event instanceof CollectionStartEvent || event.getEndMark().getLine() + 1 > line;
  }

  private static boolean isCore(String tag) {
    return tag.equals("!")
        || (tag.startsWith(CORE) && CORE_TAGS.contains(tag.substring(CORE.length())));
  }

  /** Only spaces and line breaks end a tag for the parser; a comma may be a part of one. */
  private int endOfTag(int from) {
    int at = from;
    while (at < text.length() && " \t".indexOf(text.charAt(at)) < 0 && !isLineBreakAt(at)) {
      at++;
    }
    return at;
  }

  private int endOfLine(int from) {
    int at = from;
    while (at < text.length() && !isLineBreakAt(at)) {
      at++;
    }
    return at;
  }

  private boolean isLineBreakAt(int index) {
    return SourceText.isLineBreak(text.charAt(index));
  }

  private void moveTo(int index) {
    offset = text.offsetByCodePoints(offset, index - codePoint);
    codePoint = index;
  }
}
