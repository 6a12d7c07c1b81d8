package org.headhouse.linter.fuzz;

import java.io.IOException;
import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;

/** Two threads tell of several files what one tells. */
final class ThreadsProperty implements Property {
  private static final int FILES = 6;

  private final SiteLinter one;
  private final SiteLinter two;

  ThreadsProperty() throws IOException {
    this.one = CheckProperty.linter(1);
    this.two = CheckProperty.linter(2);
  }

  @Override
  public void tryWith(byte[] input) {
    CheckReport expected = one.check(files(input));
    CheckReport found = two.check(files(input));
    Demand.that(found.equals(expected), "two threads tell %s%nand one tells %s", found, expected);
  }

  /** The beginnings of an input, from none of it to all of it. */
  private static Stream<SiteInput> files(byte[] input) {
    return IntStream.range(0, FILES)
        .mapToObj(
            i -> {
              byte[] part = Arrays.copyOf(input, input.length * (i + 1) / FILES);
              return new SiteInput("site-" + i + ".yaml", most -> part);
            });
  }
}
