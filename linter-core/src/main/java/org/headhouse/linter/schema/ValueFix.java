package org.headhouse.linter.schema;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.SpellingSuggester;
import org.headhouse.linter.yaml.CoreType;
import org.headhouse.linter.yaml.Scalar;
import org.jspecify.annotations.Nullable;

/** The value that was probably meant in place of a refused one, where the file alone shows it. */
final class ValueFix {
  private static final Set<String> TRUE = Set.of("true", "yes", "on", "y");
  private static final Set<String> FALSE = Set.of("false", "no", "off", "n");
  private static final Pattern WHOLE = Pattern.compile("[0-9](?:_?[0-9]){0,8}");

  private ValueFix() {}

  /**
   * The fix of a value, or null where it cannot be known.
   *
   * @param expected the part of the schema that refused it
   */
  static @Nullable FixDraft of(String keyword, Scalar scalar, Place place, ExpectedValue expected) {
    if (keyword.equals("enum")) {
      return nearest(scalar, place, expected);
    }
    if (!keyword.equals("type")) {
      return null;
    }
    String text = scalar.text();
    return switch (expected.get("type").asText("")) {
      case "boolean" -> truth(text.toLowerCase(Locale.ROOT), place);
      case "integer" -> WHOLE.matcher(text).matches() ? whole(text, place) : null;
      case "string" -> isTextAsWritten(scalar, expected) ? quoted(text, place) : null;
      default -> null;
    };
  }

  /** A number that is nearly one of the list may as well be meant to be another. */
  private static @Nullable FixDraft nearest(Scalar scalar, Place place, ExpectedValue expected) {
    SpellingSuggester words = new SpellingSuggester(expected.words());
    String near = words.suggest(scalar.text()).orElse(null);
    if (near == null || expected.isUnsafeGuess(scalar.text(), near)) {
      return null;
    }
    if (!expected.wordsAreText()) {
      return FixDraft.proposed("Write " + near, Edit.plain(place, near));
    }
    return words.isCertain(scalar.text(), near)
        ? FixDraft.inFile("Write " + near, Edit.write(place, near))
        : FixDraft.proposed("Write " + near, Edit.write(place, near));
  }

  private static @Nullable FixDraft truth(String text, Place place) {
    if (!TRUE.contains(text) && !FALSE.contains(text)) {
      return null;
    }
    boolean value = TRUE.contains(text);
    return FixDraft.inFile("Write " + value, Edit.plain(place, value));
  }

  private static FixDraft whole(String text, Place place) {
    int number = Integer.parseInt(text.replace("_", ""));
    return FixDraft.inFile("Write " + number, Edit.plain(place, number));
  }

  private static FixDraft quoted(String text, Place place) {
    return FixDraft.inFile("Put quotes around " + text, Edit.quote(place, text));
  }

  private static boolean isTextAsWritten(Scalar scalar, ExpectedValue expected) {
    String pattern = expected.get("pattern").asText("");
    return scalar.plain()
        && scalar.type() != CoreType.NULL
        && !expected.has("enum")
        && Pattern.compile(pattern).matcher(scalar.text()).find();
  }
}
