package org.headhouse.linter.site;

import java.util.List;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.stability.Internal;

/**
 * What is known of one type of device. The methods without {@code Setting} give the documented
 * defaults where nothing is written.
 *
 * @param transceiver what it connects to the pair
 * @param serialPort what its serial port can do
 * @param defaultAddress as delivered
 */
public record DeviceType(
    Place place,
    Setting<String> id,
    Setting<String> title,
    Transceiver transceiver,
    SerialPort serialPort,
    Setting<Integer> addressLimitSetting,
    Setting<Integer> nameLimitSetting,
    Setting<Integer> defaultAddress,
    Setting<ModuleNeed> commModule,
    Setting<Boolean> ethernet) {
  @Internal
  public DeviceType {}

  /** The load of a device of which nothing is known: that of TIA/EIA-485-A. */
  static final double USUAL_UNIT_LOAD = 1;

  private static final Place NOWHERE = Place.at(Region.START_OF_FILE);

  /** A type of which nothing is known. */
  public static final DeviceType UNKNOWN =
      new DeviceType(
          NOWHERE,
          nothing(),
          nothing(),
          new Transceiver(
              nothing(), nothing(), nothing(), nothing(), nothing(), nothing(), nothing()),
          new SerialPort(nothing(), nothing(), nothing(), nothing()),
          nothing(),
          nothing(),
          nothing(),
          nothing(),
          nothing());

  private static <T> Setting<T> nothing() {
    return new Setting.Missing<>(NOWHERE);
  }

  /** Whether anything is known of the type. */
  public boolean isKnown() {
    return id.isGiven();
  }

  /** The load of one unit on the line, 1 being 12 kΩ from each conductor to common. */
  public Setting<Double> unitLoadSetting() {
    return transceiver.unitLoad();
  }

  /** The load of one unit on the line; a whole unit load where nothing else is known. */
  public double unitLoad() {
    return unitLoadSetting().or(USUAL_UNIT_LOAD);
  }

  /** Of its line driver. */
  public Setting<Interval> riseTime() {
    return transceiver.riseTime();
  }

  /** Of its receiver. */
  public Setting<Capacitance> receiverCapacitance() {
    return transceiver.capacitance();
  }

  /** Whether its receiver needs bias to read an idle pair as idle. */
  public Setting<IdleBias> idleBias() {
    return transceiver.idleBias();
  }

  /** Whether its interface to the line is galvanically isolated. */
  public Setting<Boolean> isolated() {
    return transceiver.isolated();
  }

  /** Those it can be set to, in bit/s. */
  public Setting<List<Setting<Integer>>> baudRates() {
    return serialPort.baudRates();
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

  /** The mark of its terminal for D1, which is positive when idle. */
  public Setting<Conductor> positiveTerminalSetting() {
    return transceiver.positiveTerminal();
  }

  /** The mark of its terminal for D1. */
  public Conductor positiveTerminal() {
    return positiveTerminalSetting().or(Conductor.B);
  }

  /**
   * What the maker wrote beside the terminal that the files name so; where nobody noted it, that
   * name itself.
   */
  public String mark(Conductor terminal) {
    TerminalMarks marks = transceiver.terminals().orNull();
    return marks == null ? terminal.word() : marks.of(terminal, positiveTerminal());
  }
}
