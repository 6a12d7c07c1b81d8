package org.headhouse.linter.fault;

import org.jspecify.annotations.Nullable;

/**
 * A network of resistors seen from D1, D0, common and the supply of one bias, as the five
 * conductances between them that matter, each anywhere between a least and a most. A node is taken
 * out by star to mesh as in {@link Delta}; the ends of each result are those of its formula, which
 * moves in one direction only in each of the conductances that enter it.
 */
final class Mesh {
  static final Mesh NOTHING = new Mesh(0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

  private final double leastAcross;
  private final double mostAcross;
  private final double leastOfD1;
  private final double mostOfD1;
  private final double leastOfD0;
  private final double mostOfD0;
  private final double leastD1ToSupply;
  private final double mostD1ToSupply;
  private final double leastD0ToSupply;
  private final double mostD0ToSupply;

  // Plain numbers: a line of hundreds of items makes millions of these.
  private Mesh(
      double leastAcross,
      double mostAcross,
      double leastOfD1,
      double mostOfD1,
      double leastOfD0,
      double mostOfD0,
      double leastD1ToSupply,
      double mostD1ToSupply,
      double leastD0ToSupply,
      double mostD0ToSupply) {
    this.leastAcross = leastAcross;
    this.mostAcross = mostAcross;
    this.leastOfD1 = leastOfD1;
    this.mostOfD1 = mostOfD1;
    this.leastOfD0 = leastOfD0;
    this.mostOfD0 = mostOfD0;
    this.leastD1ToSupply = leastD1ToSupply;
    this.mostD1ToSupply = mostD1ToSupply;
    this.leastD0ToSupply = leastD0ToSupply;
    this.mostD0ToSupply = mostD0ToSupply;
  }

  /**
   * What is connected at one node.
   *
   * @param across from D1 to D0
   * @param ofD1 from D1 to common
   * @param ofD0 from D0 to common
   */
  static Mesh of(Span across, Span ofD1, Span ofD0, Span d1ToSupply, Span d0ToSupply) {
    return new Mesh(
        across.low(),
        across.high(),
        ofD1.low(),
        ofD1.high(),
        ofD0.low(),
        ofD0.high(),
        d1ToSupply.low(),
        d1ToSupply.high(),
        d0ToSupply.low(),
        d0ToSupply.high());
  }

  Mesh plus(Mesh other) {
    return new Mesh(
        leastAcross + other.leastAcross,
        mostAcross + other.mostAcross,
        leastOfD1 + other.leastOfD1,
        mostOfD1 + other.mostOfD1,
        leastOfD0 + other.leastOfD0,
        mostOfD0 + other.mostOfD0,
        leastD1ToSupply + other.leastD1ToSupply,
        mostD1ToSupply + other.mostD1ToSupply,
        leastD0ToSupply + other.leastD0ToSupply,
        mostD0ToSupply + other.mostD0ToSupply);
  }

  /**
   * Seen through a run of cable.
   *
   * @param least ohms of each conductor that is not open
   * @param most the same at their most
   */
  Mesh through(double least, double most, boolean openD1, boolean openD0) {
    return throughD1Swapped(least, most, openD1).throughD1Swapped(least, most, openD0);
  }

  /** Seen through a resistor in D1, with D1 and D0 swapped. */
  private Mesh throughD1Swapped(double least, double most, boolean open) {
    if (open) {
      return new Mesh(
          0,
          0,
          leastOfD0 + joined(leastAcross, leastOfD1, mostD1ToSupply),
          mostOfD0 + joined(mostAcross, mostOfD1, leastD1ToSupply),
          0,
          0,
          leastD0ToSupply + joined(leastAcross, leastD1ToSupply, mostOfD1),
          mostD0ToSupply + joined(mostAcross, mostD1ToSupply, leastOfD1),
          0,
          0);
    }
    return new Mesh(
        onward(most, leastAcross, mostOfD1, mostD1ToSupply),
        onward(least, mostAcross, leastOfD1, leastD1ToSupply),
        leastOfD0 + joined(least, leastAcross, leastOfD1, mostD1ToSupply),
        mostOfD0 + joined(most, mostAcross, mostOfD1, leastD1ToSupply),
        onward(most, leastOfD1, mostAcross, mostD1ToSupply),
        onward(least, mostOfD1, leastAcross, leastD1ToSupply),
        leastD0ToSupply + joined(least, leastAcross, leastD1ToSupply, mostOfD1),
        mostD0ToSupply + joined(most, mostAcross, mostD1ToSupply, leastOfD1),
        onward(most, leastD1ToSupply, mostAcross, mostOfD1),
        onward(least, mostD1ToSupply, leastAcross, leastOfD1));
  }

  /** {@code g / (1 + R·(g + a + b))}: more with g, less with all else. */
  private static double onward(double ohms, double g, double a, double b) {
    return g / (1 + ohms * (g + a + b));
  }

  /** {@code R·u·v / (1 + R·(u + v + w))}: less with w, more with all else. */
  private static double joined(double ohms, double u, double v, double w) {
    return ohms * u * v / (1 + ohms * (u + v + w));
  }

  /** The same for a conductor that is open: {@code u·v / (u + v + w)}. */
  private static double joined(double u, double v, double w) {
    double product = u * v;
    return product == 0 ? 0 : product / (u + v + w);
  }

  /** Whether anything leads to the supply. */
  boolean isDriven() {
    return mostD1ToSupply > 0 || mostD0ToSupply > 0;
  }

  /**
   * The voltage of D1 against common, as a share of the supply. With {@code A} and {@code B} the
   * sums to common and supply of D1 and D0, {@code c} across, {@code p} and {@code q} to the
   * supply, it is {@code (p·(c + B) + c·q) / (c·(A + B) + A·B)}: more with p and q, less with what
   * leads to common, and in c in one direction.
   *
   * @return null where nothing holds it
   */
  @Nullable Span d1() {
    double low = 1;
    double high = 0;
    for (double c : new double[] {leastAcross, mostAcross}) {
      low = Math.min(low, d1(c, mostOfD1, mostOfD0, leastD1ToSupply, leastD0ToSupply));
      high = Math.max(high, d1(c, leastOfD1, leastOfD0, mostD1ToSupply, mostD0ToSupply));
    }
    return Double.isNaN(low) || Double.isNaN(high) ? null : new Span(low, high);
  }

  private static double d1(double c, double a0, double b0, double p, double q) {
    double a = a0 + p;
    double b = b0 + q;
    return (p * (c + b) + c * q) / (c * (a + b) + a * b);
  }

  @Nullable Span d0() {
    return new Mesh(
            leastAcross,
            mostAcross,
            leastOfD0,
            mostOfD0,
            leastOfD1,
            mostOfD1,
            leastD0ToSupply,
            mostD0ToSupply,
            leastD1ToSupply,
            mostD1ToSupply)
        .d1();
  }

  /**
   * D1 − D0 as a share of the supply: {@code (p·b0 − q·a0) / (c·(A + B) + A·B)}, more with p and
   * {@code b0}, less with q and {@code a0}, and in c in one direction.
   *
   * @return null where nothing holds it
   */
  @Nullable Span difference() {
    double low = 1;
    double high = -1;
    for (double c : new double[] {leastAcross, mostAcross}) {
      low = Math.min(low, difference(c, mostOfD1, leastOfD0, leastD1ToSupply, mostD0ToSupply));
      high = Math.max(high, difference(c, leastOfD1, mostOfD0, mostD1ToSupply, leastD0ToSupply));
    }
    return Double.isNaN(low) || Double.isNaN(high) ? null : new Span(low, high);
  }

  private static double difference(double c, double a0, double b0, double p, double q) {
    double a = a0 + p;
    double b = b0 + q;
    return (p * b0 - q * a0) / (c * (a + b) + a * b);
  }
}
