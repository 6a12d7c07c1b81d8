package org.headhouse.linter.maven;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.apache.maven.plugin.MojoExecutionException;
import org.headhouse.linter.source.Nearest;

/** Reads a parameter that is one of a few words. */
final class Choice {
  private Choice() {}

  /**
   * The value that a word stands for.
   *
   * @throws MojoExecutionException that says what can be written instead
   */
  static <T> T of(String property, String written, T[] values, Function<T, String> word)
      throws MojoExecutionException {
    for (T value : values) {
      if (word.apply(value).equals(written)) {
        return value;
      }
    }
    List<String> words = Arrays.stream(values).map(word).toList();
    throw new MojoExecutionException(
        property
            + " cannot be \""
            + written
            + "\": write "
            + Nearest.to(written, words).orElse("one of " + String.join(", ", words)));
  }
}
