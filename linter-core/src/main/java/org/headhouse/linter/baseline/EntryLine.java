package org.headhouse.linter.baseline;

import java.util.List;
import java.util.Map;
import org.headhouse.linter.result.Identity;
import org.headhouse.linter.result.Level;
import org.jspecify.annotations.Nullable;

/** One line of a baseline, already read as JSON; reports what is wrong with it. */
final class EntryLine {
  static final String REMEDY = "write the baseline anew";

  private static final int LONGEST_QUOTE = 60;

  private static final List<String> KEYS =
      List.of("file", "site", "at", "rule", "unit", "value", "level", "detail", "times");

  private final Map<?, ?> values;
  private final SharedTexts texts;
  private final String name;
  private final int number;

  EntryLine(Map<?, ?> values, SharedTexts texts, String name, int number) {
    this.texts = texts;
    this.values = values;
    this.name = name;
    this.number = number;
  }

  void checkFormat() throws UnusableBaseline {
    if (!(values.get(BaselineText.FORMAT_KEY) instanceof Integer format)) {
      throw damaged(
          "the first line has to be {\""
              + BaselineText.FORMAT_KEY
              + "\":"
              + BaselineText.FORMAT
              + "}");
    }
    if (format != BaselineText.FORMAT) {
      throw damaged(
          "format "
              + format
              + " is not known here, format "
              + BaselineText.FORMAT
              + " is: take the version of the linter that wrote it, or");
    }
  }

  Entry entry() throws UnusableBaseline {
    for (Object key : values.keySet()) {
      if (!KEYS.contains(key)) {
        throw damaged("there is no key " + quoted(String.valueOf(key)));
      }
    }
    Identity identity =
        new Identity(
            text("site"), needed("at"), text("unit"), text("value"), level(), text("detail"));
    return new Entry(needed("file"), identity, needed("rule"));
  }

  int times() throws UnusableBaseline {
    Object times = values.get("times");
    if (times == null) {
      return 1;
    }
    if (times instanceof Integer number && number > 0) {
      return number;
    }
    throw damaged("\"times\" is not a number from 1 on");
  }

  private @Nullable Level level() throws UnusableBaseline {
    String word = text("level");
    if (word == null) {
      return null;
    }
    return Level.ofWord(word).orElseThrow(() -> damaged("there is no level " + quoted(word)));
  }

  private String needed(String key) throws UnusableBaseline {
    String text = text(key);
    if (text == null) {
      throw damaged("the key \"" + key + "\" is missing");
    }
    return text;
  }

  private @Nullable String text(String key) throws UnusableBaseline {
    Object value = values.get(key);
    if (value == null) {
      return null;
    }
    if (value instanceof String text) {
      return texts.of(text);
    }
    throw damaged("\"" + key + "\" is not a text");
  }

  private static String quoted(String text) {
    return '"'
        + (text.length() > LONGEST_QUOTE ? text.substring(0, LONGEST_QUOTE) + "…" : text)
        + '"';
  }

  private UnusableBaseline damaged(String reason) {
    return UnusableBaseline.damaged(
        name, number, reason + (reason.endsWith(" or") ? " " : "; ") + REMEDY);
  }
}
