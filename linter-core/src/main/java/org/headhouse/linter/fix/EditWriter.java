package org.headhouse.linter.fix;

import java.util.Comparator;
import java.util.List;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Replacement;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.yaml.DoubleQuoted;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.jspecify.annotations.Nullable;

/**
 * Writes single edits in the style of the text around them. An edit that would have to change more
 * than it is meant to is null.
 */
final class EditWriter {
  private final TextLines lines;

  EditWriter(TextLines lines) {
    this.lines = lines;
  }

  /** Other text for a scalar, its anchor and tag left alone. */
  @Nullable Replacement write(Scalar scalar, Edit.Write edit) {
    int start = lines.start(scalar.region());
    String before = lines.slice(start, lines.end(scalar.region()));
    if (before.startsWith("|") || before.startsWith(">")) {
      return null;
    }
    String space = before.isEmpty() && lines.charAt(start - 1) == ':' ? " " : "";
    return new Replacement(scalar.region(), space + text(before, edit));
  }

  /** Other text for a list in brackets on one line, whose comments nothing could keep. */
  @Nullable Replacement write(Sequence list, Edit.Write edit) {
    String before = lines.slice(lines.start(list.region()), lines.end(list.region()));
    boolean whole = before.startsWith("[") && !before.contains("#") && !before.contains("\n");
    return whole && edit.style() == Edit.Style.PLAIN
        ? new Replacement(list.region(), edit.value())
        : null;
  }

  /** Other text instead of an alias. */
  static Replacement insteadOfAlias(Region alias, Edit.Write edit) {
    return new Replacement(alias, text("", edit));
  }

  private static String text(String before, Edit.Write edit) {
    return switch (edit.style()) {
      case PLAIN -> edit.value();
      case QUOTED -> DoubleQuoted.of(edit.value());
      case AS_BEFORE -> ScalarText.like(before, edit.value());
    };
  }

  /** Keys after another, or after the last one. */
  @Nullable Replacement addKeys(Mapping mapping, Edit.AddKeys edit) {
    List<Mapping.Entry> own =
        mapping.entries().stream().filter(entry -> entry.via() == null).toList();
    if (own.stream().anyMatch(entry -> edit.keys().contains(entry.key().text()))) {
      return null;
    }
    Mapping.Entry before =
        own.stream()
            .filter(entry -> entry.key().text().equals(edit.after()))
            .findFirst()
            .or(() -> own.stream().max(Comparator.comparing(entry -> entry.key().region())))
            .orElse(null);
    List<String> texts = edit.keys().stream().map(key -> key + ": " + edit.value()).toList();
    int opening = lines.start(mapping.region());
    if (lines.charAt(opening) != '{') {
      return before == null ? null : onOwnLines(before.key().region(), before.value(), texts);
    }
    if (before == null) {
      boolean empty = lines.slice(opening + 1, lines.end(mapping.region()) - 1).isBlank();
      return empty ? insert(opening + 1, String.join(", ", texts)) : null;
    }
    int end = lines.end(before.value().region());
    return end == lines.start(before.value().region())
        ? null
        : insert(end, ", " + String.join(", ", texts));
  }

  /** Items after those that are there, or in front of them. */
  @Nullable Replacement addItems(Sequence list, Edit.AddItems edit) {
    List<Node> items = list.items();
    List<String> texts = edit.values().stream().map(ScalarText::of).toList();
    int opening = lines.start(list.region());
    boolean flow = lines.charAt(opening) == '[';
    if (items.isEmpty()) {
      boolean empty = flow && lines.slice(opening + 1, lines.end(list.region()) - 1).isBlank();
      return empty ? insert(opening + 1, String.join(", ", texts)) : null;
    }
    int index = Math.min(edit.index(), items.size());
    if (index == 0) {
      return flow ? inFront(items.get(0), texts) : onLinesInFront(items.get(0), texts);
    }
    Node before = items.get(index - 1);
    if (flow) {
      return insert(lines.end(before.region()), ", " + String.join(", ", texts));
    }
    int dash = dash(before);
    return dash < 0
        ? null
        : onOwnLines(
            lines.region(dash, dash), before, texts.stream().map(text -> "- " + text).toList());
  }

  private @Nullable Replacement inFront(Node first, List<String> texts) {
    boolean marked = first instanceof Node.Valued valued && valued.anchor() != null;
    return marked ? null : insert(lines.start(first.region()), String.join(", ", texts) + ", ");
  }

  private @Nullable Replacement onLinesInFront(Node first, List<String> texts) {
    int dash = dash(first);
    String indentation = dash < 0 ? null : lines.indentation(dash);
    if (indentation == null || !lines.slice(lines.startOfLine(dash), dash).isBlank()) {
      return null;
    }
    StringBuilder text = new StringBuilder();
    for (String one : texts) {
      text.append("- ").append(one).append(lines.lineBreak(dash)).append(indentation);
    }
    return insert(dash, text.toString());
  }

  /**
   * The dash of an item of a block list, or -1 where it is on another line or not next to the item.
   */
  private int dash(Node item) {
    int at = lines.start(item.region()) - 1;
    while (lines.charAt(at) == ' ') {
      at--;
    }
    return lines.charAt(at) == '-' && lines.indentation(at) != null ? at : -1;
  }

  /**
   * Lines of their own after the one that a value ends on.
   *
   * @param start what the new lines are aligned with
   */
  private @Nullable Replacement onOwnLines(Region start, Node value, List<String> texts) {
    String indentation = lines.indentation(lines.start(start));
    int end = Math.max(lines.end(value.region()), lines.end(start));
    char first = lines.charAt(lines.start(value.region()));
    if (indentation == null || first == '|' || first == '>' || !lines.endsWithComment(end)) {
      return null;
    }
    int endOfLine = lines.endOfLine(end);
    String before = lines.lineBreak(end) + indentation;
    return insert(endOfLine, before + String.join(before, texts));
  }

  /** An item of a list, with the comma or the line that belongs to it; never with a comment. */
  @Nullable Replacement removeItem(Sequence list, Region item) {
    List<Node> items = list.items();
    int index = 0;
    while (!items.get(index).region().equals(item)) {
      index++;
    }
    boolean marked = items.get(index) instanceof Node.Valued valued && valued.anchor() != null;
    if (marked || items.size() == 1) {
      return null;
    }
    if (lines.charAt(lines.start(list.region())) == '[') {
      return index == 0 ? null : deleted(lines.end(items.get(index - 1).region()), lines.end(item));
    }
    int dash = dash(items.get(index));
    if (dash < 0) {
      return null;
    }
    int from = lines.startOfLine(dash);
    boolean alone = lines.slice(from, dash).isBlank();
    int end = lines.endOfLine(lines.end(item));
    boolean last = lines.afterBreak(end) == end;
    if (!alone) {
      return null;
    }
    // The line before then ends the file as this one did.
    return last
        ? deleted(lines.endOfLine(lines.startOfLine(from - 1)), end)
        : deleted(from, lines.afterBreak(end));
  }

  private @Nullable Replacement deleted(int from, int to) {
    return lines.slice(from, to).contains("#") ? null : new Replacement(lines.region(from, to), "");
  }

  private Replacement insert(int at, String text) {
    return new Replacement(lines.region(at, at), text);
  }
}
