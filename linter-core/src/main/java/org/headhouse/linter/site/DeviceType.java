package org.headhouse.linter.site;

import java.util.List;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;

/**
 * What is known of one type of device. The methods without {@code Setting} give the documented
 * defaults where nothing is written.
 *
 * @param unitLoadSetting the load of one unit on the line, 1 being 12 kΩ from each conductor to
 *     common
 * @param riseTime of its line driver
 * @param baudRates those it can be set to, in bit/s
 * @param positiveTerminalSetting the mark of its terminal for D1, which is positive when idle
 * @param defaultAddress as delivered
 */
public record DeviceType(
    Place place,
    Setting<String> id,
    Setting<String> title,
    Setting<Double> unitLoadSetting,
    Setting<Integer> addressLimitSetting,
    Setting<Integer> nameLimitSetting,
    Setting<Interval> riseTime,
    Setting<List<Setting<Integer>>> baudRates,
    Setting<Conductor> positiveTerminalSetting,
    Setting<Integer> defaultAddress,
    Setting<ModuleNeed> commModule,
    Setting<Boolean> ethernet) {

  private static final Place NOWHERE = Place.at(Region.START_OF_FILE);

  /** A type of which nothing is known. */
  public static final DeviceType UNKNOWN =
      new DeviceType(
          NOWHERE, nothing(), nothing(), nothing(), nothing(), nothing(), nothing(), nothing(),
          nothing(), nothing(), nothing(), nothing());

  private static <T> Setting<T> nothing() {
    return new Setting.Missing<>(NOWHERE);
  }

  /** Whether anything is known of the type. */
  public boolean isKnown() {
    return id.isGiven();
  }

  /** The load of one unit on the line; a whole unit load where nothing else is known. */
  public double unitLoad() {
    return unitLoadSetting.or(1.0);
  }

  /** The highest address that the device can be set to; that of the Modbus standard by default. */
  public int addressLimit() {
    return addressLimitSetting.or(BusAddress.STANDARD.to());
  }

  /** The addresses that the device can be set to. */
  public AddressRange addresses() {
    return new AddressRange(BusAddress.SETTABLE.from(), addressLimit());
  }

  /** How many characters of a name its display shows. */
  public int nameLimit() {
    return nameLimitSetting.or(16);
  }

  /** The mark of its terminal for D1. */
  public Conductor positiveTerminal() {
    return positiveTerminalSetting.or(Conductor.B);
  }
}
