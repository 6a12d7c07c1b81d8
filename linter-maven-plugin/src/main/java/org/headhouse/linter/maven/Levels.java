package org.headhouse.linter.maven;

import java.util.Arrays;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.source.Nearest;

/** Reads levels given as parameters. */
final class Levels {
  private static final List<String> WORDS = Arrays.stream(Level.values()).map(Level::word).toList();

  private Levels() {}

  static Level of(String property, String word) throws MojoExecutionException {
    return Level.ofWord(word)
        .orElseThrow(
            () ->
                new MojoExecutionException(
                    property
                        + " cannot be \""
                        + word
                        + "\": write "
                        + Nearest.to(word, WORDS).orElse("one of " + String.join(", ", WORDS))));
  }
}
