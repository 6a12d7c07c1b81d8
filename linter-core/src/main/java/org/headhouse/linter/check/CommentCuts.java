package org.headhouse.linter.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.yaml.CoreType;
import org.headhouse.linter.yaml.Document;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.jspecify.annotations.Nullable;

/**
 * Reports names without quotes of which a number sign cuts off the rest: {@code House #14} is
 * {@code House} and a comment. A comment has a space after its sign or is more than one word.
 */
final class CommentCuts {
  private static final Set<String> NAMES =
      Set.of("unit", "repeater", "equipment", "converter", "title", "by");
  private static final Set<String> LISTS_OF_NAMES =
      Set.of("zones", "outdoor-readings-seen", "storm-response-seen", "stale-response-seen");

  /** One word with a number sign before it, which ends its line or its item. */
  private static final Pattern CUT = Pattern.compile("[ \\t]+(#[^\\s#]\\S*)[ \\t]*");

  /** The lines on which a comment may have cut a name, and their texts. */
  private final Map<Integer, String> suspects;

  private final List<Finding> findings = new ArrayList<>();

  private CommentCuts(Map<Integer, String> suspects) {
    this.suspects = suspects;
  }

  /** The findings of a document, whose tree is looked at only where a comment looks like a word. */
  static List<Finding> of(Document document) {
    Map<Integer, String> suspects = suspects(document.source());
    if (suspects.isEmpty()) {
      return List.of();
    }
    CommentCuts cuts = new CommentCuts(suspects);
    cuts.visit(document.root(), "");
    return cuts.findings;
  }

  private static Map<Integer, String> suspects(SourceText source) {
    Map<Integer, String> suspects = new HashMap<>();
    String text = source.text();
    for (int sign = text.indexOf('#'); sign >= 0; sign = text.indexOf('#', sign + 1)) {
      if (followsText(text, sign) && isOneWord(text, sign)) {
        int line = source.at(sign).startLine();
        suspects.put(line, source.line(line, Integer.MAX_VALUE));
      }
    }
    return suspects;
  }

  private static boolean followsText(String text, int sign) {
    return sign > 0 && isBlank(text.charAt(sign - 1));
  }

  private static boolean isOneWord(String text, int sign) {
    int at = sign + 1;
    while (at < text.length() && text.charAt(at) > ' ') {
      at++;
    }
    int end = at;
    while (at < text.length() && isBlank(text.charAt(at))) {
      at++;
    }
    return end > sign + 1 && (at == text.length() || SourceText.isLineBreak(text.charAt(at)));
  }

  private static boolean isBlank(char c) {
    return c == ' ' || c == '\t';
  }

  private void visit(@Nullable Node node, String key) {
    if (node instanceof Mapping mapping) {
      for (Mapping.Entry entry : mapping.entries()) {
        if (entry.via() == null) {
          visit(entry.value(), entry.key().text());
        }
      }
    } else if (node instanceof Sequence sequence) {
      String of = LISTS_OF_NAMES.contains(key) ? "unit" : "";
      sequence.items().forEach(item -> visit(item, of));
    } else if (node instanceof Scalar scalar && scalar.plain() && NAMES.contains(key)) {
      look(scalar);
    }
  }

  private void look(Scalar scalar) {
    String line = suspects.get(scalar.region().endLine());
    if (line == null || scalar.type() == CoreType.NULL) {
      return;
    }
    int after = line.offsetByCodePoints(0, scalar.region().endColumn() - 1);
    Matcher cut = CUT.matcher(line).region(after, line.length());
    if (cut.matches()) {
      findings.add(finding(scalar, cut.group(1)));
    }
  }

  private static Finding finding(Scalar scalar, String rest) {
    String whole = scalar.text() + " " + rest;
    return Finding.of(
        "yaml.comment-cut",
        scalar.region(),
        new Message(
            "\"" + scalar.text() + "\" ends before " + rest,
            "a number sign after a space starts a comment, so the rest is not part of the name",
            "write \"" + whole + "\" in quotes; if it is a comment, put a space after #"));
  }
}
