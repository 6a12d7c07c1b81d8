package org.headhouse.linter.fuzz;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;

/**
 * Files up to the limit stay within the heap and the time that the fuzzer allows.
 *
 * <p>An input is a beginning, a piece that is repeated, and an end, with a NUL between; without
 * one, all of it is repeated.
 */
final class LargeProperty implements Property {
  private static final int LARGEST = 1 << 20;
  private static final int MOST_TIMES = 50_000;

  private final SiteLinter linter;

  LargeProperty() throws IOException {
    this.linter = CheckProperty.linter(1);
  }

  @Override
  public void tryWith(byte[] input) {
    byte[] file = grown(input);
    CheckReport report = linter.check(Stream.of(new SiteInput("alder-brook.yaml", most -> file)));
    Told.noTrouble(report.notifications());
    new Told("alder-brook.yaml", file).results(report.results());
  }

  private static byte[] grown(byte[] input) {
    int first = indexOfNul(input, 0);
    int second = indexOfNul(input, Math.min(first + 1, input.length));
    boolean divided = second < input.length;
    byte[] piece = divided ? Arrays.copyOfRange(input, first + 1, second) : input;
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    file.write(input, 0, divided ? first : 0);
    int end = divided ? input.length - second - 1 : 0;
    for (int i = 0; i < MOST_TIMES && file.size() + piece.length + end <= LARGEST; i++) {
      file.writeBytes(piece);
    }
    file.write(input, input.length - end, end);
    return file.toByteArray();
  }

  private static int indexOfNul(byte[] input, int from) {
    int at = from;
    while (at < input.length && input[at] != 0) {
      at++;
    }
    return at;
  }
}
