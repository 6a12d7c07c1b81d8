package org.headhouse.linter.fuzz;

import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** What the fuzzer calls, with an input that it made; by its form, all of it is static. */
public final class FuzzTarget {
  private static @Nullable Property property;

  private FuzzTarget() {}

  /** Called once, with the name of the subject. */
  public static void fuzzerInitialize(String[] arguments) throws IOException {
    property = Subject.of(arguments[0]).property();
  }

  /** Called with each input. */
  public static void fuzzerTestOneInput(byte[] input) throws IOException {
    Property chosen = property;
    if (chosen == null) {
      throw new IllegalStateException("no subject");
    }
    chosen.tryWith(input);
  }
}
