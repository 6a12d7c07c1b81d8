package org.headhouse.linter.fuzz;

import java.util.Locale;

/** Tells what does not hold, without paying for the words where it does. */
final class Demand {
  private Demand() {}

  static void that(boolean holds, String otherwise, Object... arguments) {
    if (!holds) {
      throw new AssertionError(String.format(Locale.ROOT, otherwise, arguments));
    }
  }
}
