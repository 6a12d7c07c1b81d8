package org.headhouse.linter.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Segments whose edges ring: ends matched, missing or with a capacitor, stubs of 2 m and more. */
final class RandomRingingLines {
  private static final double[] UNIT_LOADS = {1, 0.5, 0.25, 0.125};
  private static final double[] IMPEDANCES = {100, 120, 150};
  private static final double LIGHT = 299_792_458;

  private final Random random;

  RandomRingingLines(long seed) {
    random = new Random(seed);
  }

  RingingLine next(int least, int most) {
    int size = least + random.nextInt(most - least + 1);
    double impedance = IMPEDANCES[random.nextInt(3)];
    boolean stubs = random.nextBoolean();
    int biased = random.nextInt(2 * size);
    List<SegmentItem> items = new ArrayList<>();
    List<RingingLine.Branch> branches = new ArrayList<>();
    List<Double> hops = new ArrayList<>();
    double spacing = 2 + random.nextInt(60);
    boolean even = random.nextInt(3) == 0;
    for (int at = 0; at < size; at++) {
      boolean end = at == 0 || at == size - 1;
      Terminator terminator = end ? terminator(impedance) : null;
      items.add(
          new SegmentItem(
              "item " + at,
              UNIT_LOADS[random.nextInt(4)],
              terminator,
              at == biased ? new BiasResistors(560, 5) : null));
      double stub = stubs && random.nextBoolean() ? (even ? 2 : 2 + random.nextInt(18)) : 0;
      branches.add(
          new RingingLine.Branch(
              stub,
              (10 + random.nextInt(90)) * 1e-12,
              terminator != null && terminator.capacitorInSeries() ? 1e-9 : 0));
      if (at > 0) {
        hops.add(even ? spacing : random.nextInt(9) == 0 ? 0.0 : 2 + spacing * random.nextDouble());
      }
    }
    double ohms = Wire.awg(20 + 2 * random.nextInt(3)).resistanceOhmsPerMetre(random.nextInt(50));
    return new RingingLine(
        new SegmentCircuit(items, hops, ohms),
        new CableSpread(ohms, ohms),
        branches,
        impedance,
        LIGHT * (0.6 + 0.2 * random.nextDouble()),
        (10 + random.nextInt(300)) * 1e-9,
        0.2);
  }

  private @Nullable Terminator terminator(double impedance) {
    int kind = random.nextInt(8);
    return kind < 5
        ? Terminator.resistor(kind == 4 ? 150 : impedance)
        : kind == 5 ? Terminator.resistorAndCapacitor(impedance) : null;
  }
}
