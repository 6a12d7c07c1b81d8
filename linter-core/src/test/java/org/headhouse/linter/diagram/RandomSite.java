package org.headhouse.linter.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Texts of sites with everything that a drawing shows, and with faults: names of any length and
 * script, stubs, repeaters, runs between buildings, terminators of all sorts, keys left out.
 */
final class RandomSite {
  static final List<String> HOSTILE_NAMES =
      List.of(
          "<script>alert(1)</script>",
          "\"quoted\" & 'single' <b>",
          "]]> --> <!--",
          "\u202Eevil\u202C \u2066nested\u2069\u2069",
          "بيت زجاجي رقم واحد في الشمال",
          "חממה צפונית",
          "温室北側の育苗ベンチ第三区画の制御盤",
          "Z\u0301\u0302\u0303\u0304\u0305\u0306a\u0307\u0308l\u0309g\u030Ao",
          "🌱🌿🍅🥒🌶️🍓👩‍🌾👨‍🌾",
          "\uFDFD\uFDFD\uFDFD",
          "W".repeat(200),
          "word ".repeat(39) + "end",
          "i".repeat(200),
          "Donaudampfschifffahrtsgesellschaftskapitän");

  private static final List<String> PLAIN_NAMES =
      List.of("Bay", "Propagation", "Hanging Baskets", "Cold Frames West", "Øst", "Übungshaus");

  private RandomSite() {}

  /** The text of a site; whether it is in order is chance, that every unit is there is not. */
  static String text(int units, Random random) {
    List<String> names = new ArrayList<>();
    StringBuilder chain = new StringBuilder();
    int written = 0;
    while (written < units) {
      boolean last = written == units - 1;
      boolean repeater = written > 0 && random.nextInt(12) == 0;
      String name = name(names.size(), random);
      names.add(name);
      chain.append(repeater ? repeater(name, random) : unit(name, written++, units, random));
      boolean toNext = repeater || !last;
      chain.append(toNext ? cable(random) : "");
    }
    return """
        format: 1
        site: example
        title: %s
        stage: planned
        weather-station: {at: %s, readings: [light, temperature, humidity, wind-speed, wind-direction, rain]}
        line:
          baud: 9600
          parity: even
          stop-bits: 1
          cable: {gauge: 24 AWG, shielded: %s, impedance: 120 ohm}
        %schain:
        %s"""
        .formatted(
            quoted(name(units, random)),
            quoted(names.get(random.nextInt(5) > 0 ? 0 : random.nextInt(names.size()))),
            random.nextBoolean(),
            bias(names, random),
            chain);
  }

  private static String name(int index, Random random) {
    String name =
        random.nextInt(4) == 0
            ? HOSTILE_NAMES.get(random.nextInt(HOSTILE_NAMES.size()))
            : PLAIN_NAMES.get(random.nextInt(PLAIN_NAMES.size()));
    String number = random.nextInt(30) == 0 ? "" : " " + (index + 1);
    int most = name.offsetByCodePoints(0, Math.min(name.codePointCount(0, name.length()), 190));
    return name.substring(0, most) + number;
  }

  private static String bias(List<String> names, Random random) {
    if (random.nextInt(3) == 0) {
      return "";
    }
    StringBuilder bias = new StringBuilder("  bias:\n");
    for (int i = 0; i < 1 + random.nextInt(2); i++) {
      String at = quoted(names.get(random.nextInt(names.size())));
      bias.append("    - {at: " + at + ", resistors: 560 ohm, supply: 4.75 V}\n");
    }
    return bias.toString();
  }

  private static String unit(String name, int index, int units, Random random) {
    boolean end = index == 0 || index == units - 1;
    String termination =
        switch (random.nextInt(end ? 3 : 20)) {
          case 0 -> "120 ohm";
          case 1 -> "120 ohm + 1 nF";
          case 2 -> end ? "0.12 kohm" : "none";
          case 3 -> "nonsense";
          default -> "none";
        };
    int address = random.nextInt(20) == 0 ? 1 + random.nextInt(255) : index + 1;
    return "  - unit: "
        + quoted(name)
        + "\n    role: "
        + (index == 0 ? "head" : "follower")
        + (random.nextInt(25) == 0 ? "" : "\n    address: " + address)
        + "\n    comm-module: fitted"
        + "\n    conductors: "
        + (index == 0 || random.nextInt(30) == 0 ? "[A, B, G]" : "[A, B]")
        + (random.nextInt(25) == 0 ? "" : "\n    termination: " + termination)
        + "\n    outdoor: {light: "
        + (index == 0 ? "local" : "head")
        + "}"
        + (random.nextInt(8) == 0 ? "\n    stub: " + random.nextInt(40) / 10.0 + " m" : "")
        + (random.nextInt(15) == 0 ? "\n    pair: crossed" : "")
        + "\n";
  }

  private static String repeater(String name, Random random) {
    return "  - repeater: "
        + quoted(name)
        + "\n    termination: {in: 120 ohm, out: "
        + (random.nextBoolean() ? "120 ohm + 1 nF" : "none")
        + "}\n";
  }

  private static String cable(Random random) {
    return (random.nextInt(40) == 0
            ? ""
            : "    cable-to-next: " + random.nextInt(900) / 10.0 + " m\n")
        + (random.nextInt(6) == 0 ? "    run-to-next: between-buildings\n" : "")
        + (random.nextInt(9) == 0 ? "    surge-protection-to-next: fitted\n" : "");
  }

  private static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                quoted.append('\\').appendCodePoint(c);
              } else if (c >= 0x2000 && c < 0x2070) {
                quoted.append(String.format(Locale.ROOT, "\\u%04X", c));
              } else {
                quoted.appendCodePoint(c);
              }
            });
    return quoted.append('"').toString();
  }
}
