package org.headhouse.linter.fuzz;

import java.io.IOException;

/** Something that holds for every input. */
@FunctionalInterface
public interface Property {

  /**
   * Tries an input.
   *
   * @throws AssertionError where the property does not hold for it
   */
  void tryWith(byte[] input) throws IOException;
}
