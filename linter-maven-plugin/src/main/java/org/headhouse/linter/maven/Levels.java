package org.headhouse.linter.maven;

import org.apache.maven.plugin.MojoExecutionException;
import org.headhouse.linter.result.Level;

/** Reads levels given as parameters. */
final class Levels {
  private Levels() {}

  static Level of(String property, String word) throws MojoExecutionException {
    return Choice.of(property, word, Level.values(), Level::word);
  }
}
