package org.headhouse.linter.report.sheet;

import java.util.List;

/**
 * The connections of the cable at one item of the chain.
 *
 * @param kind address and type of a unit, or that it is a repeater
 * @param positive the terminal for D1, by the device's own marks
 * @param negative the terminal for D0
 * @param pair how the pair compares with the marks of the head unit
 * @param common where the common conductor goes
 * @param cableOut to where, and how long
 * @param termination across the pair, and bias where it is fitted
 * @param open what is still wrong here
 */
record LandingRow(
    String name,
    String kind,
    String positive,
    String negative,
    String pair,
    String common,
    String shield,
    String surge,
    String termination,
    String module,
    String cableOut,
    List<OpenPoint> open) {

  LandingRow {
    open = List.copyOf(open);
  }
}
