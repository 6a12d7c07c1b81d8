package org.headhouse.linter;

/** Format 1 with every key that it has, in each of its files. */
public final class ContractExample {
  private ContractExample() {}

  public static final String SITE =
      """
      format: 1
      site: alder-brook                  # id; the file is alder-brook.yaml, or alder-brook/site.yaml
      title: Alder Brook Plant Nursery   # optional
      customer: alder-brook-nurseries    # optional; groups several lines of one customer
      stage: planned                     # planned | commissioned

      weather-station:
        at: Propagation                  # the unit that it is wired to
        readings: [light, temperature, wind-speed, wind-direction, rain]
        maximum-age: 30 s                # optional: how old a reading may become at any follower
        averaging: 10 s                  # optional: over which the station averages wind
        close-within: 3 min              # optional: from the gust until the vents have to be shut

      line:
        baud: 9600                       # 1200 2400 4800 9600 19200 38400 57600 115200
        parity: even                     # even | odd | none
        stop-bits: 1                     # 1 | 2
        cable: {gauge: 24 AWG, shielded: true, impedance: 120 ohm, velocity-factor: 0.66, capacitance: 52 pF}
        bias:                            # optional; at most one per segment
          - {at: Propagation, resistors: 560 ohm, supply: 5 V}
          - {at: East Boiler Room, side: out, resistors: 560 ohm, supply: 5 V, tolerance: 1 %}
        traffic:                         # optional; what the head unit sends to all
          broadcast: {registers: 12, every: 5 s}
        maximum-temperature: 50 degC     # optional; of the conductors, default 20 degC

      defaults:                          # optional: what units of a role have unless they say otherwise
        head: {device-type: eight-way}
        follower: {comm-module: fitted, conductors: [A, B], outdoor: head, on-stale-readings: close}

      chain:
        - unit: Propagation
          role: head
          address: 1
          device-type: eight-way         # optional, from device-types.yaml
          serial-number: HH-0042         # optional; also of the other items
          firmware: "3.2"                # optional
          comm-module: fitted            # fitted | built-in | absent
          conductors: [A, B, G]          # what is landed on the unit's line terminals
          termination: 120 ohm           # none | R | R + C, e.g. 120 ohm + 1 nF
          outdoor: {light: local, temperature: local, wind-speed: local, wind-direction: local, rain: local}
          vents: roof                    # optional: none | roof | side | roof-and-side
          on-stale-readings: close       # optional: close | close-and-alarm | hold | alarm
          stale-after: 60 s              # optional: how long it goes on with a reading that does not come anew
          close-time: 90 s               # optional: from a reading over the limit until its slowest vent is shut
          cable-to-next: 42 m            # missing on the last item only
        - unit: Seedling North
          role: follower
          address: 2
          comm-module: fitted
          conductors: [A, B]
          termination: none
          outdoor: {light: head, temperature: head, wind-speed: head, wind-direction: head, rain: head}
          pair: straight                 # optional: straight | crossed
          stub: 0.5 m                    # optional: the unit hangs on a branch of this length
          network: {ip: 192.168.40.12/24, gateway: 192.168.40.1}   # optional, units with Ethernet
          cable-to-next: 120 ft
          run-to-next: between-buildings # optional: inside (default) | between-buildings
          surge-protection-to-next: fitted   # optional: none (default) | fitted, at both ends of that run
        - repeater: East Boiler Room     # optional items
          termination: {in: 120 ohm, out: 120 ohm}
          unit-load: {in: 1, out: 1/2}
          idle-bias: {in: needed, out: not-needed}
          isolated: true
          conductors: {in: [A, B], out: [A, B, G]}
          pair: {in: straight, out: straight}
          cable-to-next: 30 m
        - equipment: Dosing Rig          # another Modbus device on the pair
          address: 57
          broadcasts: ignored            # ignored | obeyed
          polled: {by: head, registers: 4, every: 1 min}
          unit-load: 1
          idle-bias: not-needed
          isolated: false
          termination: none
          cable-to-next: 20 m
        - converter: Office              # where supervision.at is attached
          latency: 16 ms                 # optional: what it adds to each answer
          unit-load: 1/8
          conductors: [A, B]
          pair: straight
          stub: 0.3 m
          termination: none
          cable-to-next: 12 m
        - unit: Hardening Bay
          role: follower
          address: 8
          comm-module: built-in
          conductors: [A, B]
          termination: 120 ohm
          outdoor: {light: head, temperature: head, wind-speed: head, wind-direction: head, rain: head}
          cable-to-next: none            # the last item may say so

      supervision:                       # optional: software that lists and polls the units
        link: serial                     # serial | ethernet | through-head
        at: Office                       # the converter, for serial
        zones: [Propagation, Seedling North, Hardening Bay]
        polling: {every: 20 s, registers: 60, timeout: 1 s, retries: 1}

      commissioning:                     # wanted once stage is commissioned
        date: 2026-03-14
        by: R.O.
        measured:
          pair-resistance: 58 ohm
          idle-voltage: 0.24 V
          elsewhere:
            - {at: Hardening Bay, pair-resistance: 59 ohm, idle-voltage: 0.22 V}
            - {at: East Boiler Room, side: out, idle-voltage: -25 mV}
        outdoor-readings-seen: [Seedling North, Hardening Bay]
        storm-response-seen: [{unit: Propagation, limit: 12 m/s, closed-in: 85 s}, Seedling North]
        stale-response-seen: [Propagation, Seedling North]
        meter: {type: true-RMS hand meter, serial-number: M-118, calibrated-until: 2027-01-31}
        renewed:
          - date: 2026-11-02
            by: R.O.
            reason: Hardening Bay exchanged
            outdoor-readings-seen: [Hardening Bay]
            storm-response-seen: [Hardening Bay]
            stale-response-seen: [Hardening Bay]
            measured: {pair-resistance: 58 ohm, idle-voltage: 0.24 V}
            meter: {type: true-RMS hand meter}

      as-found:                          # optional: readings on a line that misbehaves
        - {at: Propagation, pair-resistance: 118 ohm}
        - {at: Hardening Bay, idle-voltage: 0.02 V}
        - {at: Propagation, loop-resistance: 31 ohm}
        - {at: Seedling North, toward: end, pair-resistance: 121 ohm}
        - {at: Propagation, d1-voltage: 2.7 V, d0-voltage: 2.4 V}
        - {at: East Boiler Room, side: in, idle-voltage: 0.2 V}
        - {first-silent: Hardening Bay}

      suppressions:                      # optional: accepted on purpose
        - rule: address.gap
          unit: Hardening Bay            # optional; without it, the whole site
          justification: Unit 7 is in store until the new house is built.
          until: 2027-04-01              # optional
      """;

  public static final String TYPES =
      """
      format: 1
      device-types:
        - id: eight-way
          title: Eight-output climate controller
          unit-load: 1/8            # default 1
          address-limit: 247        # default 247, at most 255
          name-limit: 16            # characters that its display shows, default 16
          rise-time: 100 ns         # optional, of its line driver
          baud-rates: [9600, 19200] # optional, those it can be set to
          positive-terminal: B      # the mark of its terminal for D1; default B; makers differ
          default-address: 1        # optional, as delivered
          comm-module: needed       # needed | built-in
          ethernet: true
          capacitance: 60 pF        # optional: of its receiver
          idle-bias: not-needed     # needed | not-needed; not written: not known
          isolated: false           # not written: not known
          parities: [even, odd, none]   # those it can be set to
          processing: 20 ms         # the longest it takes before it answers
          other-clients: waits      # of a head unit
          terminals: {positive: D+, negative: D-, common: GND}   # optional: the maker's marks
      """;

  public static final String POLICY =
      """
      format: 1
      rule-set: 1
      rules: {firmware.mixed: {level: warning, parameters: {}}}
      baseline: linter-baseline.jsonl
      """;
}
