package org.headhouse.linter.result;

import java.util.Locale;

/** How a result stands to those that were there before; the words are SARIF's. */
public enum BaselineState {
  NEW,
  /** It is in the baseline. */
  UNCHANGED;

  /** The word as SARIF has it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
