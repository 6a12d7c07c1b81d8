package org.headhouse.linter.run;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.source.SpellingSuggester;

/** Reads a parameter that is one of a few words. */
public final class EnumParameter {
  private EnumParameter() {}

  /**
   * The value that a word stands for.
   *
   * @throws UserError that says what can be written instead
   */
  public static <T> T of(String parameter, String written, T[] values, Function<T, String> word)
      throws UserError {
    for (T value : values) {
      if (word.apply(value).equals(written)) {
        return value;
      }
    }
    List<String> words = Arrays.stream(values).map(word).toList();
    throw new UserError(
        parameter
            + " cannot be \""
            + written
            + "\": use "
            + SpellingSuggester.suggest(written, words)
                .orElse("one of " + String.join(", ", words)));
  }
}
