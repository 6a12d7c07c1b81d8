package org.headhouse.linter.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * A site made at random, one thing wrong with its line, and each of its parts somewhere in what it
 * may have; written as a netlist that knows the site and nothing of the linter.
 */
final class BlindLine {
  private static final double COPPER_OHM_METRES = 0.017241e-6;
  private static final double LARGE_OHMS = 1e9;
  private static final double WIRE_OHMS = 1e-3;

  /** The kinds of fault, by their words. */
  static final List<String> KINDS =
      List.of(
          "terminator-missing",
          "terminator-extra",
          "terminator-value",
          "conductor-open",
          "pair-shorted",
          "conductors-swapped",
          "bias-missing",
          "bias-half",
          "bias-extra",
          "bias-reversed",
          "unit-unpowered",
          "common-open");

  private final Random random;
  private final String name;
  private final int size;
  private final double[] metres;
  private final double[] unitLoads;
  private final int biasAt;
  private final double biasOhms;
  private final double supplyVolts;
  private final double[] terminators;

  final String kind;
  final int at;
  final boolean inHop;
  final List<String> conductors = new ArrayList<>();
  private final boolean swappedFromHere;
  private final double extraOhms;
  private final double extraVolts;
  private final double wrongOhms;
  private final double shortOhms;
  private final double shortPlace;
  private final boolean railFloats;

  // One value of each part, the same for every measurement.
  private final double[] hopOhms;
  private final double[] loadOhmsOfD1;
  private final double[] loadOhmsOfD0;
  private final double[] terminatorOhms;
  private final double biasToD1;
  private final double biasToD0;
  private final double biasVolts;
  private final double extraToD1;
  private final double extraToD0;

  BlindLine(int number, String kind, Random random) {
    this.name = "b" + number;
    this.kind = kind;
    this.random = random;
    size = 2 + random.nextInt(6);
    metres = new double[size - 1];
    unitLoads = new double[size];
    for (int item = 0; item < size; item++) {
      unitLoads[item] = random.nextInt(4) == 0 ? 1 : 0.125;
      if (item < size - 1) {
        metres[item] = 1 + random.nextInt(120);
      }
    }
    biasAt = random.nextInt(3) > 0 ? 0 : random.nextInt(size);
    biasOhms = pick(470, 560, 620);
    supplyVolts = 5;
    terminators = new double[size];
    terminators[0] = 120;
    terminators[size - 1] = 120;
    boolean hop = kind.equals("conductor-open") || (kind.equals("pair-shorted") && coin());
    inHop = hop;
    at = place(hop);
    if (kind.equals("conductor-open")) {
      int which = random.nextInt(3);
      if (which != 0) {
        conductors.add("D0");
      }
      if (which != 1) {
        conductors.add("D1");
      }
    }
    if (kind.equals("bias-half")) {
      conductors.add(coin() ? "D0" : "D1");
    }
    swappedFromHere = coin() && at > 0 && at < size - 1;
    extraOhms = pick(390, 470, 560, 680, 1000, 1500);
    extraVolts = coin() ? 5 : 3.3;
    wrongOhms = pick(12, 47, 68, 82, 180, 220, 330, 560, 1000, 1200);
    shortOhms = random.nextInt(3) == 0 ? WIRE_OHMS : 3 * random.nextDouble();
    shortPlace = random.nextDouble();
    railFloats = coin();

    double celsius = -10 + 60 * random.nextDouble();
    double area = Math.PI / 4 * Math.pow(0.127e-3 * Math.pow(92, 12 / 39.0), 2);
    double ohmsPerMetre = COPPER_OHM_METRES / area * (1 + 0.00393 * (celsius - 20));
    hopOhms = new double[size - 1];
    loadOhmsOfD1 = new double[size];
    loadOhmsOfD0 = new double[size];
    terminatorOhms = new double[size];
    for (int item = 0; item < size; item++) {
      if (item < size - 1) {
        hopOhms[item] = metres[item] * ohmsPerMetre * off(0.02);
      }
      double load = unitLoads[item] * random.nextDouble();
      loadOhmsOfD1[item] = 12_000 / Math.max(1e-6, load);
      loadOhmsOfD0[item] = loadOhmsOfD1[item] / (1 - 0.2 * random.nextDouble());
      terminatorOhms[item] = terminators[item] * off(0.05);
    }
    biasToD1 = biasOhms * off(0.05);
    biasToD0 = biasOhms * off(0.05);
    biasVolts = supplyVolts * off(0.05);
    extraToD1 = extraOhms * off(0.05);
    extraToD0 = extraOhms * off(0.05);
  }

  private int place(boolean hop) {
    return switch (kind) {
      case "terminator-missing", "terminator-value" -> coin() ? 0 : size - 1;
      case "bias-missing", "bias-half", "bias-reversed" -> biasAt;
      default -> random.nextInt(hop ? size - 1 : size);
    };
  }

  private boolean coin() {
    return random.nextBoolean();
  }

  private double pick(double... values) {
    return values[random.nextInt(values.length)];
  }

  /** At an end of what it may be every other time. */
  private double off(double share) {
    double by = coin() ? share * (2 * random.nextDouble() - 1) : coin() ? share : -share;
    return 1 + by;
  }

  int size() {
    return size;
  }

  String called(int item) {
    return "House " + (char) ('A' + item);
  }

  /** The site as it should be, with some readings. */
  String site(List<String> readings) {
    StringBuilder text = new StringBuilder();
    text.append(
        """
        format: 1
        site: blind
        stage: planned
        weather-station: {at: House A, readings: [light]}
        line:
          baud: 9600
          parity: even
          stop-bits: 1
          cable: {gauge: 24 AWG, shielded: true, impedance: 120 ohm}
        """);
    text.append(
        String.format(
            Locale.ROOT,
            "  bias: [{at: %s, resistors: %.0f ohm, supply: %.0f V}]%nchain:%n",
            called(biasAt),
            biasOhms,
            supplyVolts));
    for (int item = 0; item < size; item++) {
      boolean unit = item == 0 || item % 3 != 2;
      text.append("  - ").append(unit ? "unit: " : "equipment: ").append(called(item));
      text.append("\n    address: ").append(item + 1).append("\n    termination: ");
      text.append(terminators[item] > 0 ? "120 ohm" : "none").append("\n");
      text.append("    conductors: [A, B, C]\n");
      text.append(unit ? "    role: " + (item == 0 ? "head" : "follower") + "\n" : "");
      text.append(unit ? "    comm-module: fitted\n    outdoor: {light: " : "");
      text.append(unit ? (item == 0 ? "local" : "head") + "}\n" : "");
      text.append(
          unit
              ? "    device-type: " + (unitLoads[item] < 1 ? "light" : "heavy") + "\n"
              : "    unit-load: " + (unitLoads[item] < 1 ? "1/8" : "1") + "\n");
      if (item < size - 1) {
        text.append(String.format(Locale.ROOT, "    cable-to-next: %.0f m%n", metres[item]));
      }
    }
    text.append("as-found:\n");
    readings.forEach(reading -> text.append("  - ").append(reading).append("\n"));
    return text.toString();
  }

  static String types() {
    return """
        format: 1
        device-types:
          - {id: light, title: Light, unit-load: 1/8}
          - {id: heavy, title: Heavy, unit-load: 1}
        """;
  }

  /** Whether a fault that is named is the one of this line. */
  boolean isMeant(NamedFault fault) {
    List<String> places = inHop ? List.of(called(at), called(at + 1)) : List.of(called(at));
    return fault.fault().equals(kind)
        && fault.at().equals(places)
        && fault.conductors().equals(conductors);
  }

  /** All that can be measured: a copy of the line for each resistance, and one that is idle. */
  String netlist() {
    Netlist all = new Netlist(name);
    write(all, "i", false, -1, -1, false);
    for (int item = 0; item < size; item++) {
      write(all, "p" + item, true, item, 0, false);
      write(all, "h" + item, true, item, -2, false);
      write(all, "e" + item, true, item, 2, false);
      write(all, "l" + item, true, item, 0, true);
    }
    return all.text.toString();
  }

  /** What a perfect meter shows. */
  double found(Map<String, Double> volts, String quantity, @Nullable String toward, int item) {
    boolean turned = isTurned(item);
    return switch (quantity) {
      case "idle-voltage" -> idle(volts, item, turned);
      case "d1-voltage" -> volts(volts, "i", turned ? "n" : "p", item) - common(volts, item);
      case "d0-voltage" -> volts(volts, "i", turned ? "p" : "n", item) - common(volts, item);
      default -> ohms(volts, prefix(quantity, toward) + item, item);
    };
  }

  private static String prefix(String quantity, @Nullable String toward) {
    if (quantity.equals("loop-resistance")) {
      return "l";
    }
    return toward == null ? "p" : toward.equals("head") ? "h" : "e";
  }

  private double ohms(Map<String, Double> volts, String copy, int item) {
    return (volts(volts, copy, "p", item) - volts(volts, copy, "n", item)) / 1e-3;
  }

  private double idle(Map<String, Double> volts, int item, boolean turned) {
    double difference = volts(volts, "i", "p", item) - volts(volts, "i", "n", item);
    return turned ? -difference : difference;
  }

  private double common(Map<String, Double> volts, int item) {
    return kind.equals("common-open") && item == at ? volts(volts, "i", "c", item) : 0;
  }

  private double volts(Map<String, Double> volts, String copy, String conductor, int item) {
    Double value = volts.get((name + copy + conductor + item).toLowerCase(Locale.ROOT));
    if (value == null) {
      throw new IllegalStateException("no node " + name + copy + conductor + item);
    }
    return value;
  }

  private boolean isTurned(int item) {
    return kind.equals("conductors-swapped") && (swappedFromHere ? item >= at : item == at);
  }

  private static final class Netlist {
    private final StringBuilder text = new StringBuilder();
    private final String name;
    private int parts;

    Netlist(String name) {
      this.name = name;
    }

    void add(String element, String from, String to, double value) {
      text.append(
          String.format(
              Locale.ROOT, "%s%s_%d %s %s %.12g%n", element, name, parts++, from, to, value));
    }
  }

  /**
   * One copy of the line.
   *
   * @param opened -2 for the part before the item alone, 2 for the part after it, else 0
   */
  private void write(
      Netlist out, String copy, boolean off, int measured, int opened, boolean loop) {
    String p = name + copy + "p";
    String n = name + copy + "n";
    for (int item = 0; item < size; item++) {
      out.add("R", p + item, "0", LARGE_OHMS);
      out.add("R", n + item, "0", LARGE_OHMS);
      if (item < size - 1) {
        hop(
            out,
            p,
            n,
            item,
            (opened == -2 && item >= measured) || (opened == 2 && item < measured));
      }
      boolean here = !(opened != 0 && item == measured && at % 2 == 0);
      if (here) {
        item(out, name + copy, item, off, loop);
      }
    }
    if (loop) {
      int far = measured == size - 1 ? 0 : size - 1;
      out.add("R", p + far, n + far, WIRE_OHMS);
    }
    if (measured >= 0) {
      out.add("I", n + measured, p + measured, 1e-3);
    }
  }

  private void hop(Netlist out, String p, String n, int hop, boolean cut) {
    boolean mine = inHop && hop == at;
    boolean shorted = mine && kind.equals("pair-shorted");
    double place = shorted ? shortPlace : 0.5;
    String middleP = p + "m" + hop;
    String middleN = n + "m" + hop;
    conductor(out, p + hop, middleP, p + (hop + 1), hop, place, cut || isOpen(mine, "D1"));
    conductor(out, n + hop, middleN, n + (hop + 1), hop, place, cut || isOpen(mine, "D0"));
    if (shorted && !cut) {
      out.add("R", middleP, middleN, shortOhms);
    }
  }

  private boolean isOpen(boolean mine, String conductor) {
    return mine && kind.equals("conductor-open") && conductors.contains(conductor);
  }

  private void conductor(
      Netlist out, String from, String middle, String to, int hop, double place, boolean open) {
    out.add("R", from, middle, Math.max(WIRE_OHMS / 100, hopOhms[hop] * place));
    out.add(
        "R", middle, to, open ? LARGE_OHMS : Math.max(WIRE_OHMS / 100, hopOhms[hop] * (1 - place)));
  }

  private void item(Netlist out, String copy, int item, boolean off, boolean loop) {
    boolean mine = !inHop && item == at;
    boolean turned = isTurned(item);
    String d1 = copy + (turned ? "n" : "p") + item;
    String d0 = copy + (turned ? "p" : "n") + item;
    String common = "0";
    if (mine && kind.equals("common-open")) {
      common = copy + "c" + item;
      out.add("R", common, "0", LARGE_OHMS);
    }
    boolean missing = mine && kind.equals("terminator-missing");
    boolean wrong = mine && kind.equals("terminator-value");
    if (terminators[item] > 0 && !missing && !loop) {
      out.add("R", d1, d0, wrong ? wrongOhms : terminatorOhms[item]);
    }
    if (mine && kind.equals("terminator-extra") && !(loop && coin(item))) {
      out.add("R", d1, d0, 120);
    }
    if (mine && kind.equals("pair-shorted")) {
      out.add("R", d1, d0, shortOhms);
    }
    boolean unpowered = mine && kind.equals("unit-unpowered");
    if (!unpowered) {
      out.add("R", d1, common, loadOhmsOfD1[item]);
      out.add("R", d0, common, loadOhmsOfD0[item]);
    }
    if (item == biasAt && !(mine && kind.equals("bias-missing"))) {
      boolean reversed = mine && kind.equals("bias-reversed");
      boolean dead = off || unpowered;
      bias(
          out,
          copy + "s" + item,
          reversed ? d0 : d1,
          reversed ? d1 : d0,
          common,
          isHalf(mine, "D1") ? LARGE_OHMS : biasToD1,
          isHalf(mine, "D0") ? LARGE_OHMS : biasToD0,
          dead ? 0 : biasVolts,
          dead && railFloats);
    }
    if (mine && kind.equals("bias-extra")) {
      bias(
          out,
          copy + "x" + item,
          d1,
          d0,
          common,
          extraToD1,
          extraToD0,
          off ? 0 : extraVolts,
          off && railFloats);
    }
  }

  private boolean isHalf(boolean mine, String conductor) {
    return mine && kind.equals("bias-half") && conductors.contains(conductor);
  }

  /** The same each time it is asked of one item. */
  private boolean coin(int item) {
    return (item + size) % 2 == 0;
  }

  private static void bias(
      Netlist out,
      String supply,
      String up,
      String down,
      String common,
      double toUp,
      double toDown,
      double volts,
      boolean floats) {
    if (floats) {
      out.add("R", supply, "0", LARGE_OHMS);
    } else {
      out.add("V", supply, common, volts);
    }
    out.add("R", supply, up, toUp);
    out.add("R", down, common, toDown);
  }
}
