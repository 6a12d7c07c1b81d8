package org.headhouse.linter.line;

/**
 * A resistor across the pair, alone or with a capacitor in series.
 *
 * <p>With a capacitor it is open for a steady voltage, and counts as its resistor while bits
 * change. The capacitor's value does not enter: 120 ohms and 1 nF settle in a few times 0.12 µs,
 * and taking them as the resistor alone errs to the safe side.
 *
 * @param resistorOhms the resistor
 * @param capacitorInSeries whether a capacitor blocks direct current
 */
public record Terminator(double resistorOhms, boolean capacitorInSeries) {

  public Terminator {
    Require.positive(resistorOhms, "terminator");
  }

  /** A resistor alone. */
  public static Terminator resistor(double ohms) {
    return new Terminator(ohms, false);
  }

  /** A resistor with a capacitor in series (MODBUS over Serial Line V1.02 §3.4.5). */
  public static Terminator resistorAndCapacitor(double ohms) {
    return new Terminator(ohms, true);
  }

  /** The conductance across the pair that a steady voltage meets. */
  double steadySiemens() {
    return capacitorInSeries ? 0 : 1 / resistorOhms;
  }

  /** The conductance across the pair that a bit meets. */
  double signalSiemens() {
    return 1 / resistorOhms;
  }
}
