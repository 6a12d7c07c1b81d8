package org.headhouse.linter.site;

/** A number with its unit: the value in SI units, and the characters as the file has them. */
public sealed interface Quantity
    permits Capacitance,
        Gauge,
        Interval,
        Length,
        Percentage,
        Resistance,
        Temperature,
        Voltage,
        WindSpeed {

  /** The quantity as the file has it, with its unit. */
  String written();
}
