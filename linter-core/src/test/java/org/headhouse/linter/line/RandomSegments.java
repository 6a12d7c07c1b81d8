package org.headhouse.linter.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Segments of all sorts: hops of no length, loads of all sizes, terminators missing, doubled, in
 * the middle or with a capacitor, bias at none, one or several places.
 */
final class RandomSegments {
  private static final double[] UNIT_LOADS = {1, 0.5, 0.25, 0.125};
  private static final double[] TERMINATORS = {54, 100, 120, 150, 220};

  private final Random random;

  private RandomSegments(Random random) {
    this.random = random;
  }

  /** The same segments each time. */
  static Stream<SegmentCircuit> of(long seed, int count, int least, int most) {
    Random random = new Random(seed);
    return Stream.generate(() -> one(random, least, most)).limit(count);
  }

  /** A segment of {@code least} to {@code most} items. */
  static SegmentCircuit one(Random random, int least, int most) {
    return new RandomSegments(random).segment(least + random.nextInt(most - least + 1));
  }

  private SegmentCircuit segment(int size) {
    int places = random.nextInt(4);
    boolean[] biased = new boolean[size];
    for (int place = 0; place < places; place++) {
      biased[random.nextInt(size)] = true;
    }
    List<SegmentItem> items = new ArrayList<>();
    for (int at = 0; at < size; at++) {
      boolean atEnd = at == 0 || at == size - 1;
      Terminator terminator = random.nextDouble() < (atEnd ? 0.8 : 0.05) ? terminator() : null;
      items.add(item("item " + at, atEnd, terminator, biased[at] ? bias() : null));
    }
    double spacingMetres = (10 + random.nextInt(2000)) / (double) size;
    List<Double> hops =
        IntStream.range(1, size)
            .mapToObj(
                at -> random.nextInt(8) == 0 ? 0.0 : spacingMetres * (0.1 + random.nextDouble()))
            .toList();
    double ohmsPerMetre =
        Wire.awg(16 + random.nextInt(11)).resistanceOhmsPerMetre(random.nextInt(60));
    return new SegmentCircuit(items, hops, ohmsPerMetre);
  }

  private SegmentItem item(
      String name, boolean atEnd, @Nullable Terminator terminator, @Nullable BiasResistors bias) {
    if (random.nextDouble() < (atEnd ? 0.4 : 0.1)) {
      return new SegmentItem(name, 1, terminator, bias);
    }
    return new SegmentItem(name, UNIT_LOADS[random.nextInt(4)], terminator, bias);
  }

  private Terminator terminator() {
    return new Terminator(TERMINATORS[random.nextInt(5)], random.nextInt(4) == 0);
  }

  /** One of three is a weak pull. */
  private BiasResistors bias() {
    if (random.nextInt(3) == 0) {
      return new BiasResistors(2200 + random.nextInt(45_000), random.nextBoolean() ? 3.3 : 5);
    }
    return new BiasResistors(200 + random.nextInt(1000), 3 + 9 * random.nextDouble());
  }
}
