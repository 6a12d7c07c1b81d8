package org.headhouse.linter.site;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Addresses of a line from one to another, both included.
 *
 * @param from at least 0
 * @param to not below {@code from}
 */
public record AddressRange(int from, int to) {
  private static final Pattern WRITTEN = Pattern.compile("([0-9]{1,3})(?:\\s*-\\s*([0-9]{1,3}))?");

  public AddressRange {
    if (from < 0 || to < from) {
      throw new IllegalArgumentException("no range of addresses: " + from + " to " + to);
    }
  }

  /** Reads {@code 100-109} or {@code 57}; null for anything else, also for {@code 109-100}. */
  public static @Nullable AddressRange of(String written) {
    Matcher matcher = WRITTEN.matcher(written);
    if (!matcher.matches()) {
      return null;
    }
    int from = Integer.parseInt(matcher.group(1));
    int to = matcher.group(2) == null ? from : Integer.parseInt(matcher.group(2));
    return from <= to ? new AddressRange(from, to) : null;
  }

  /** Whether an address is one of these. */
  public boolean contains(int address) {
    return from <= address && address <= to;
  }

  /** All of them, from the lowest on. */
  public IntStream addresses() {
    return IntStream.rangeClosed(from, to);
  }

  /** {@code 100 to 109}, or {@code 57}. */
  public String inWords() {
    return from == to ? String.valueOf(from) : from + " to " + to;
  }
}
