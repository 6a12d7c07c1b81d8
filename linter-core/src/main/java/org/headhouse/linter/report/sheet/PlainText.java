package org.headhouse.linter.report.sheet;

import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Word;
import org.headhouse.linter.source.InvisibleCharacters;

/**
 * Text of a site's file as a sheet shows it: nothing that cannot be seen, and not longer than a
 * sheet has room for. Escaping is left to the templates.
 */
final class PlainText {
  private static final int LONGEST_NAME = 200;
  private static final int LONGEST_TEXT = 1000;

  /** Printed where the file has no value, or none that is understood. */
  static final String NOT_WRITTEN = "not in the file";

  private PlainText() {}

  /** A name or a title. */
  static String name(String text) {
    return cut(text, LONGEST_NAME);
  }

  /** A sentence. */
  static String sentence(String text) {
    return cut(text, LONGEST_TEXT);
  }

  /** The full stop after a text of somebody else: none where the text ends a sentence itself. */
  static String stop(String text) {
    return text.isEmpty() || ".!?…".indexOf(text.charAt(text.length() - 1)) >= 0 ? "" : ".";
  }

  /** The name of an item, or its place in the chain where it has none. */
  static String name(ChainItem item) {
    return name(item.name().or("item " + (item.index() + 1)));
  }

  /** The same, never cut to the room of a column. */
  static String wholeName(ChainItem item) {
    return sentence(item.name().or("item " + (item.index() + 1)));
  }

  /** A word of a closed set, spelt for people: {@code wind speed}. */
  static String word(Word word) {
    return word.word().replace('-', ' ');
  }

  /** The word that is written. */
  static String word(Setting<? extends Word> setting) {
    return setting.optional().map(PlainText::word).orElse(NOT_WRITTEN);
  }

  private static String cut(String text, int most) {
    StringBuilder shown = new StringBuilder(Math.min(text.length(), most));
    int count = 0;
    for (int i = 0; i < text.length() && count < most; count++) {
      int c = text.codePointAt(i);
      shown.appendCodePoint(InvisibleCharacters.visible(c));
      i += Character.charCount(c);
    }
    return text.codePointCount(0, text.length()) > most
        ? shown.append('…').toString()
        : shown.toString();
  }
}
