package org.headhouse.linter.run;

import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Level;

/** Reads levels given as parameters. */
public final class Levels {
  private Levels() {}

  /**
   * The level that a word stands for.
   *
   * @throws UserError that says what can be written instead
   */
  public static Level of(String parameter, String word) throws UserError {
    return EnumParameter.of(parameter, word, Level.values(), Level::word);
  }
}
