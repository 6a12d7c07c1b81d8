package org.headhouse.linter.site;

/**
 * Server addresses of a line, and what they are for (MODBUS over Serial Line V1.02, 2.2). What a
 * type of device can be set to is {@link DeviceType#addresses()}; what a line keeps free is {@link
 * ExcludedAddresses}.
 */
public final class BusAddress {
  /** The address of requests to all servers at once. */
  public static final int BROADCAST = 0;

  /** The head unit's (a rule of this format). */
  public static final int HEAD = 1;

  /** What the specification gives to servers. */
  public static final AddressRange STANDARD = new AddressRange(1, 247);

  /** What devices can be set to, those that go beyond the specification included. */
  public static final AddressRange SETTABLE = new AddressRange(1, 255);

  /** What a file can say. */
  public static final AddressRange WRITABLE = new AddressRange(BROADCAST, 255);

  private BusAddress() {}

  /** Whether the specification gives an address to no server: 0, and 248 to 255. */
  public static boolean isReserved(int address) {
    return !STANDARD.contains(address);
  }
}
