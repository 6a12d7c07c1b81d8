package org.headhouse.linter.schema;

import java.util.List;
import java.util.random.RandomGenerator;

/**
 * A file of device types with one or two lines changed, so that it may or may not be one any more.
 */
public final class MutatedDeviceTypes {
  private static final List<String> TYPES =
      List.of(
          "format: 1",
          "device-types:",
          "  - id: eight-way",
          "    title: Eight-output climate controller",
          "    unit-load: 1/8",
          "    address-limit: 247",
          "    name-limit: 16",
          "    rise-time: 100 ns",
          "    baud-rates: [9600, 19200]",
          "    positive-terminal: B",
          "    default-address: 1",
          "    comm-module: needed",
          "    ethernet: true",
          "    capacitance: 60 pF",
          "    idle-bias: not-needed",
          "    isolated: false",
          "    parities: [even, odd, none]",
          "    processing: 20 ms",
          "    other-clients: waits",
          "    terminals: {positive: D+, negative: D-, common: GND}",
          "  - id: screen-drive",
          "    unit-load: 0.5",
          "    baud-rates: [1200]");
  private static final String[] VALUES =
      """
      1|0|-1|2|255|256|64|65|1.0|1.5|1e1|1e20|.inf|-.inf|.nan|0x10|0o17|010|32|32.0|33|0.5|.5|5.|-0.0
      ~|''|true|false|yes|none|A|B|G|b|needed|built-in|fitted|[]|{}|[9600]|[9600, 9600]|[9601]|['9600']
      [9600.0, 19200]|[[9600]]|{9600: 1}|1/8|1/0|0/8|01/8|1/1000|999/1|33/1|'1'|'0.125'|'0.0000000001'|'0'
      '33'|100 ns|100ns|100|0 ns|100 ps|100 ms|1234567890 ns|0.5 ns|eight-way|Eight|eight--way|a_b
      aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa|123456789012345|"a\\n"|1e-400|1e400
      60pF|1 nF|not-needed|waits|[even, even]|[odd]|[x]|0 ms|1 min|{positive: D+, negative: D-}|{positive: D+}
      {positive: D+, negative: ''}|{positive: 1, negative: D-}|aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa
      0.0000000000000000000001|12345678901234567890|+1|1E2|0.1e1
      """
          .strip()
          .split("[|\n]");
  private static final String[] KEYS = {
    "id",
    "title",
    "unit-load",
    "rise-time",
    "ethernet",
    "nonsense",
    "format",
    "device-types",
    "baud-rates",
    "capacitance",
    "idle-bias",
    "isolated",
    "parities",
    "processing",
    "other-clients",
    "terminals"
  };

  private MutatedDeviceTypes() {}

  /** A text that follows from the choices of a generator. */
  public static String of(RandomGenerator random) {
    String[] lines = TYPES.toArray(String[]::new);
    for (int changes = 1 + random.nextInt(2); changes > 0; changes--) {
      int line = random.nextInt(lines.length);
      String value = VALUES[random.nextInt(VALUES.length)];
      int colon = lines[line].indexOf(':');
      switch (random.nextInt(8)) {
        case 0 -> lines[line] = "";
        case 1 -> lines[line] += "\n    " + KEYS[random.nextInt(KEYS.length)] + ": " + value;
        default -> lines[line] = lines[line].substring(0, Math.max(0, colon)) + ": " + value;
      }
    }
    return String.join("\n", lines) + "\n";
  }
}
