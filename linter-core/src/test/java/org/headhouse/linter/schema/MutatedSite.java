package org.headhouse.linter.schema;

import java.util.List;
import java.util.random.RandomGenerator;
import org.headhouse.linter.ContractExample;
import org.headhouse.linter.Example;

/** An example with one or two lines changed, so that it may or may not be a site any more. */
public final class MutatedSite {
  private static final List<String> VALUES =
      List.of(
          "1",
          "0",
          "-1",
          "256",
          "1.0",
          "1.5",
          "1e1",
          "1e20",
          "~",
          "''",
          "true",
          "yes",
          "none",
          "head",
          "local",
          "follower",
          "[]",
          "{}",
          "[A, B]",
          "[A, A]",
          "[light, light]",
          "[x]",
          "{light: head}",
          "40 m",
          "40",
          "40m",
          "04 AWG",
          "4 AWG",
          "41 AWG",
          "0.5 mm2",
          "120 ohm + 1 nF",
          "1 nF",
          "120 ohm+1nF",
          "10 ft",
          "10 V",
          "1234567890 m",
          "1.1234567890 m",
          "24 AWG ",
          "9600",
          "'9600'",
          "19200",
          "2026-03-14",
          "2026-3-14",
          "even",
          "planned",
          "A-b",
          "a-b",
          "Propagation",
          ".inf",
          "0x10",
          "0o17",
          "[[]]",
          "\"40 m\\n\"",
          "-5 degC",
          "crossed",
          "fitted",
          "inside",
          "{in: none}",
          "{in: 1}",
          "{out: 1/8, in: straight}",
          "{in: [A, B, C]}",
          "C",
          "1/8",
          "0.66",
          "33",
          "1 %",
          "1.5%",
          "99.9 %",
          "100 %",
          "0100 %",
          "12 m/s",
          "43km/h",
          "27 mph",
          "52 pF",
          "-25 mV",
          "- 25 mV",
          "?",
          "needed",
          "close-and-alarm",
          "through-head",
          "supervision",
          "ignored",
          "[Propagation, {unit: Propagation}]",
          "[{unit: Propagation, limit: 12 m/s, closed-in: 85 s}]",
          "[{limit: 12 m/s}]",
          "[{at: Propagation, side: in}]",
          "[{first-silent: Propagation}]",
          "[{first-silent: Propagation, at: Propagation}]",
          "[{at: Propagation, toward: end, pair-resistance: 121 ohm}]",
          "[{toward: end, pair-resistance: 121 ohm}]",
          "{by: head, registers: 4, every: 1 min}");
  private static final List<String> KEYS =
      List.of(
          "title",
          "customer",
          "traffic",
          "bias",
          "stub",
          "network",
          "vents",
          "pair",
          "supervision",
          "commissioning",
          "suppressions",
          "as-found",
          "toward",
          "first-silent",
          "loop-resistance",
          "firmware",
          "device-type",
          "maximum-age",
          "nonsense",
          "repeater",
          "termination",
          "run-to-next",
          "surge-protection-to-next",
          "on-stale-readings",
          "maximum-temperature",
          "polling",
          "date",
          "unit",
          "stage",
          "equipment",
          "converter",
          "averaging",
          "close-within",
          "velocity-factor",
          "capacitance",
          "side",
          "tolerance",
          "serial-number",
          "stale-after",
          "close-time",
          "address",
          "broadcasts",
          "polled",
          "unit-load",
          "idle-bias",
          "isolated",
          "latency",
          "at",
          "elsewhere",
          "storm-response-seen",
          "stale-response-seen",
          "meter",
          "renewed",
          "conductors",
          "cable-to-next",
          "defaults",
          "follower",
          "outdoor");

  /** A small site, the same with defaults, and one with every key. */
  private static final List<String> SITES =
      List.of(Example.SITE, Example.SHORT, ContractExample.SITE.replaceAll(" +# .*", ""));

  private MutatedSite() {}

  /** A text that follows from the choices of a generator. */
  public static String of(RandomGenerator random) {
    String text = SITES.get(random.nextInt(SITES.size()));
    for (int changes = 1 + random.nextInt(2); changes > 0; changes--) {
      String[] lines = text.split("\n", -1);
      int line = random.nextInt(lines.length - 1);
      lines[line] =
          random.nextInt(3) == 0 ? withKey(lines[line], random) : withValue(lines[line], random);
      text = String.join("\n", lines);
    }
    return text;
  }

  private static String withValue(String line, RandomGenerator random) {
    int colon = line.lastIndexOf(": ");
    String value = VALUES.get(random.nextInt(VALUES.size()));
    if (colon < 0 || random.nextInt(8) == 0) {
      return "";
    }
    int end = colon + 2;
    while (end < line.length() && ",]}".indexOf(line.charAt(end)) < 0) {
      end++;
    }
    return line.substring(0, colon + 2) + value + line.substring(end);
  }

  private static String withKey(String line, RandomGenerator random) {
    String indent = " ".repeat(random.nextBoolean() ? 0 : 4);
    String key = KEYS.get(random.nextInt(KEYS.size()));
    return line + "\n" + indent + key + ": " + VALUES.get(random.nextInt(VALUES.size()));
  }
}
