package org.headhouse.linter.site;

import org.headhouse.linter.stability.Internal;

/**
 * What a type of device connects to the pair.
 *
 * @param unitLoad 1 being 12 kΩ from each conductor to common
 * @param riseTime of its line driver
 * @param capacitance of its receiver
 * @param idleBias whether its receiver needs bias to read an idle pair as idle
 * @param isolated whether its interface to the line is galvanically isolated
 * @param positiveTerminal the mark of its terminal for D1, which is positive when idle
 * @param terminals the maker's marks
 */
public record Transceiver(
    Setting<Double> unitLoad,
    Setting<Interval> riseTime,
    Setting<Capacitance> capacitance,
    Setting<IdleBias> idleBias,
    Setting<Boolean> isolated,
    Setting<Conductor> positiveTerminal,
    Setting<TerminalMarks> terminals) {
  @Internal
  public Transceiver {}
}
