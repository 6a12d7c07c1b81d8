package org.headhouse.linter;

/** A small site that keeps every rule, for tests that break one thing in it. */
public final class Example {
  private Example() {}

  public static final String SITE =
      """
      format: 1
      site: example
      stage: planned
      weather-station: {at: Propagation, readings: [light, temperature]}
      line: {baud: 9600, parity: even, stop-bits: 1, cable: {gauge: 24 AWG, shielded: true, impedance: 120 ohm}, bias: [{at: Propagation, resistors: 510 ohm, supply: 5 V}]}
      chain:
        - unit: Propagation
          role: head
          address: 1
          comm-module: fitted
          conductors: [A, B, G]
          termination: 120 ohm
          outdoor: {light: local, temperature: local}
          cable-to-next: 40 m
        - unit: Seedling North
          role: follower
          address: 2
          comm-module: fitted
          conductors: [A, B]
          termination: none
          outdoor: {light: head, temperature: head}
          cable-to-next: 60 m
        - unit: Hardening Bay
          role: follower
          address: 3
          comm-module: fitted
          conductors: [A, B]
          termination: 120 ohm
          outdoor: {light: head, temperature: head}
      """;

  /** The same site with what its units have in common said once. */
  public static final String SHORT =
      """
      format: 1
      site: example
      stage: planned
      weather-station: {at: Propagation, readings: [light, temperature]}
      line: {baud: 9600, parity: even, stop-bits: 1, cable: {gauge: 24 AWG, shielded: true, impedance: 120 ohm}, bias: [{at: Propagation, resistors: 510 ohm, supply: 5 V}]}
      defaults:
        head: {outdoor: local}
        follower:
          comm-module: fitted
          conductors: [A, B]
          outdoor: head
      chain:
        - unit: Propagation
          role: head
          address: 1
          comm-module: fitted
          conductors: [A, B, G]
          termination: 120 ohm
          cable-to-next: 40 m
        - unit: Seedling North
          role: follower
          address: 2
          termination: none
          cable-to-next: 60 m
        - unit: Hardening Bay
          role: follower
          address: 3
          termination: 120 ohm
      """;

  /** The site with one text replaced by another, wherever it stands. */
  public static String with(String text, String other) {
    if (!SITE.contains(text)) {
      throw new IllegalArgumentException("the example has no " + text);
    }
    return SITE.replace(text, other);
  }
}
