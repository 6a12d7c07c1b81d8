package org.headhouse.linter.maven;

/** A site with one fault: two of its units have address 2. */
final class ElmRow {
  static final String SITE =
      """
      format: 1
      site: elm-row
      stage: planned
      weather-station: {at: Propagation, readings: [light]}
      line: {baud: 9600, parity: even, stop-bits: 1, cable: {gauge: 24 AWG, shielded: true, impedance: 120 ohm}, bias: [{at: Propagation, resistors: 510 ohm, supply: 5 V}]}
      chain:
        - unit: Propagation
          role: head
          address: 1
          comm-module: fitted
          conductors: [A, B, G]
          termination: 120 ohm
          outdoor: {light: local}
          cable-to-next: 40 m
        - unit: Seedling North
          role: follower
          address: 2
          comm-module: fitted
          conductors: [A, B]
          termination: none
          outdoor: {light: head}
          cable-to-next: 40 m
        - unit: Hardening Bay
          role: follower
          address: 2
          comm-module: fitted
          conductors: [A, B]
          termination: 120 ohm
          outdoor: {light: head}
      """;

  private ElmRow() {}
}
