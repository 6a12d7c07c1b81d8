package org.headhouse.linter.rules.network;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * An IPv4 address with its network prefix, read without asking any name service.
 *
 * @param address the 32 bits
 * @param prefix the length of the prefix, 1 to 31, or 32 where none is written
 */
record Ipv4(long address, int prefix) {
  private static final int NO_PREFIX = 32;
  private static final Pattern FORM =
      Pattern.compile(
          "([0-9]{1,3})\\.([0-9]{1,3})\\.([0-9]{1,3})\\.([0-9]{1,3})(?:/([0-9]{1,2}))?");

  /** The address that a text is, or null. */
  static @Nullable Ipv4 parse(String text) {
    var matcher = FORM.matcher(text);
    if (!matcher.matches()) {
      return null;
    }
    long address = 0;
    for (int i = 1; i <= 4; i++) {
      String part = matcher.group(i);
      int octet = Integer.parseInt(part);
      if (octet > 255 || (part.length() > 1 && part.charAt(0) == '0')) {
        return null;
      }
      address = address << 8 | octet;
    }
    String prefix = matcher.group(5);
    int length = prefix == null ? NO_PREFIX : Integer.parseInt(prefix);
    return length < 1 || length > NO_PREFIX ? null : new Ipv4(address, length);
  }

  /** Whether the length of the prefix is written. */
  boolean hasPrefix() {
    return prefix < NO_PREFIX;
  }

  /** The first address of the network. */
  long network() {
    return address >> (32 - prefix) << (32 - prefix);
  }

  /** Whether another address lies in the same network. */
  boolean contains(Ipv4 other) {
    return new Ipv4(other.address, prefix).network() == network();
  }

  /** The same address in the network of another. */
  Ipv4 inNetworkOf(Ipv4 other) {
    return new Ipv4(address, other.prefix);
  }

  /** Whether a device can have the address: not the network's own, not its broadcast. */
  boolean isHost() {
    long last = network() | (1L << (32 - prefix)) - 1;
    long first = address >> 24;
    return prefix <= 30
        && address != network()
        && address != last
        && first != 0
        && first != 127
        && first < 224;
  }
}
