package org.headhouse.linter.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.headhouse.linter.fault.Measurement.Quantity;
import org.headhouse.linter.line.BiasResistors;
import org.headhouse.linter.line.CableSpread;
import org.headhouse.linter.line.SegmentCircuit;
import org.headhouse.linter.line.SegmentItem;
import org.headhouse.linter.line.SegmentSpread;
import org.headhouse.linter.line.Terminator;
import org.headhouse.linter.line.Tolerances;
import org.junit.jupiter.api.Test;

/**
 * The ranges of every fault against networks with every part somewhere in what it may have, solved
 * by an elimination that knows nothing of ladders.
 */
class MeterRangesTest {
  private static final double OHMS_PER_METRE = 0.0842;
  private static final CableSpread CABLE =
      new CableSpread(0.86 * OHMS_PER_METRE, 1.15 * OHMS_PER_METRE);
  private static final double ROUNDING = 1e-4;

  /** No part may lie at a corner only, and none in the middle only. */
  @Test
  void noRangeIsShorterThanTheTruth() {
    Random random = new Random(7);
    int looks = 0;
    for (int round = 0; round < 60; round++) {
      SegmentCircuit circuit = circuit(random, 2 + random.nextInt(5));
      FaultCatalogue catalogue =
          new FaultCatalogue(new SegmentSpread(circuit, CABLE, Tolerances.USUAL), 120);
      for (FaultCatalogue.Entry entry : catalogue.all()) {
        for (FaultyPair look : entry.looks()) {
          for (int draw = 0; draw < 3; draw++) {
            assertInside(look, entry.fault(), random);
          }
          looks++;
        }
      }
    }
    assertThat(looks).isGreaterThan(3000);
  }

  /** All corners of a pair of two items: the ranges are as short as they can be. */
  @Test
  void theRangesOfASoundPairEndAtItsWorstCorners() {
    SegmentCircuit circuit =
        new SegmentCircuit(
            List.of(
                new SegmentItem("a", 0, Terminator.resistor(120), new BiasResistors(560, 5)),
                new SegmentItem("b", 0, Terminator.resistor(120), null)),
            List.of(300.0),
            OHMS_PER_METRE);
    FaultyPair sound =
        new FaultCatalogue(new SegmentSpread(circuit, CABLE, Tolerances.USUAL), 120).sound();
    for (Quantity quantity : List.of(Quantity.PAIR_RESISTANCE, Quantity.IDLE_VOLTAGE)) {
      double least = Double.POSITIVE_INFINITY;
      double most = 0;
      for (int corner = 0; corner < 1 << 12; corner++) {
        int bits = corner;
        int[] at = {0};
        Choice choice =
            span -> (bits >> at[0]++ & 1) == 0 ? span.low() : Math.min(span.high(), 1e4);
        double found = truth(sound, quantity, 1, choice);
        least = Math.min(least, found);
        most = Math.max(most, found);
      }
      Span range = new Expectation(sound).of(new Measurement(quantity, 1));
      assertThat(least).as("%s", quantity).isCloseTo(range.low(), near(range.low()));
      // The bias may lead nowhere with its supply off, which no corner above has.
      if (quantity == Quantity.IDLE_VOLTAGE) {
        assertThat(most).isCloseTo(range.high(), near(range.high()));
      } else {
        assertThat(range.high())
            .isCloseTo(1 / (1 / 126.0 + 1 / (126 + 2 * 300 * 0.0842 * 1.15)), near(60));
      }
    }
  }

  private static org.assertj.core.data.Offset<Double> near(double value) {
    return org.assertj.core.api.Assertions.within(1e-6 * Math.abs(value));
  }

  private static void assertInside(FaultyPair look, Fault fault, Random random) {
    Expectation expectation = new Expectation(look);
    Choice choice = choice(random);
    for (Quantity quantity : Quantity.values()) {
      int item = random.nextInt(look.nodes.length);
      Span range = expectation.of(new Measurement(quantity, item));
      double found = truth(look, quantity, item, choice);
      double slack = ROUNDING * Math.max(quantity.isResistance() ? 1 : 0.1, Math.abs(found));
      // What leaks to common in the elimination is no open circuit.
      boolean open = quantity.isResistance() && found > 1e7;
      assertThat(open ? range.high() > 1e7 : found <= range.high() + slack)
          .as("%s %s at %s: %s of %s", fault, quantity, item, found, range)
          .isTrue();
      assertThat(found)
          .as("%s %s at %s in %s", fault, quantity, item, range)
          .isGreaterThanOrEqualTo(range.low() - slack);
    }
  }

  private interface Choice {
    double of(Span span);
  }

  /** Each value at one of its ends or somewhere between. */
  private static Choice choice(Random random) {
    return span -> {
      double high = Math.min(span.high(), 1e3);
      return switch (random.nextInt(4)) {
        case 0 -> span.low();
        case 1 -> high;
        default -> span.low() + random.nextDouble() * (high - span.low());
      };
    };
  }

  /** One network, with its parts chosen, as a meter finds it. */
  private static double truth(FaultyPair pair, Quantity quantity, int item, Choice choice) {
    boolean powered = !quantity.isResistance();
    boolean loop = quantity == Quantity.LOOP_RESISTANCE;
    int node = pair.nodes[item];
    NodalNetwork network = new NodalNetwork();
    int[] d1 = new int[pair.size()];
    int[] d0 = new int[pair.size()];
    for (int at = 0; at < pair.size(); at++) {
      d1[at] = network.node();
      d0[at] = network.node();
    }
    for (int hop = 0; hop < pair.hops(); hop++) {
      if ((quantity == Quantity.RESISTANCE_TOWARD_HEAD && hop >= node)
          || (quantity == Quantity.RESISTANCE_TOWARD_END && hop < node)) {
        continue;
      }
      double ohms = choice.of(new Span(pair.leastHopOhms[hop], pair.mostHopOhms[hop]));
      if (!pair.openD1[hop]) {
        network.resistor(d1[hop], d1[hop + 1], Math.max(1e-4, ohms));
      }
      if (!pair.openD0[hop]) {
        network.resistor(d0[hop], d0[hop + 1], Math.max(1e-4, ohms));
      }
    }
    for (int at = 0; at < pair.size(); at++) {
      Span across = loop ? pair.acrossWithoutTerminators[at] : pair.across[at];
      conduct(network, d1[at], d0[at], choice.of(across));
      Span load = new Span(0, pair.mostLoad[at]);
      double siemens = choice.of(load);
      double unlike = choice.of(new Span(1 - AlikeIdle.UNLIKE_INPUTS, 1));
      conduct(network, d1[at], 0, siemens);
      conduct(network, d0[at], 0, siemens * unlike);
    }
    for (BiasSource source : pair.sources) {
      bias(network, source, powered, choice, d1[source.node()], d0[source.node()]);
    }
    if (loop) {
      int far = item < pair.nodes.length - 1 ? pair.nodes[pair.nodes.length - 1] : pair.nodes[0];
      network.resistor(d1[far], d0[far], 0.01);
    }
    if (!powered) {
      network.current(d0[node], d1[node], 1e-3);
      double[] volts = network.volts();
      return (volts[d1[node]] - volts[d0[node]]) / 1e-3;
    }
    double[] volts = network.volts();
    boolean turned = pair.turned[item];
    double first = volts[(turned ? d0 : d1)[node]];
    double second = volts[(turned ? d1 : d0)[node]];
    return switch (quantity) {
      case D1_VOLTAGE -> first;
      case D0_VOLTAGE -> second;
      default -> first - second;
    };
  }

  private static void bias(
      NodalNetwork network, BiasSource source, boolean powered, Choice choice, int d1, int d0) {
    int up = source.reversed() ? d0 : d1;
    int down = source.reversed() ? d1 : d0;
    double toSupply = choice.of(source.toSupply());
    // Two resistors of one bias are alike but for their tolerance.
    boolean alike = source.toSupply().equals(source.toCommon());
    double toCommon =
        alike
            ? Math.min(
                source.toCommon().high(),
                Math.max(
                    source.toCommon().low(),
                    toSupply + choice.of(new Span(-1, 1)) * source.unlikeSiemens()))
            : choice.of(source.toCommon());
    double volts = powered ? choice.of(source.supplyVolts()) : 0;
    if (toSupply > 0) {
      network.supply(up, volts, 1 / toSupply);
    }
    conduct(network, down, 0, toCommon);
  }

  private static void conduct(NodalNetwork network, int from, int to, double siemens) {
    if (siemens > 0) {
      network.resistor(from, to, 1 / siemens);
    }
  }

  private static SegmentCircuit circuit(Random random, int size) {
    int biased = random.nextInt(size);
    boolean second = random.nextInt(4) == 0;
    List<SegmentItem> items = new ArrayList<>();
    DoubleUnaryOperator some = most -> random.nextDouble() * most;
    for (int at = 0; at < size; at++) {
      boolean end = at == 0 || at == size - 1;
      Terminator terminator =
          end && random.nextInt(6) > 0 ? new Terminator(120, random.nextInt(8) == 0) : null;
      BiasResistors bias =
          at == biased || (second && at == 0)
              ? new BiasResistors(450 + some.applyAsDouble(300), random.nextBoolean() ? 5 : 3.3)
              : null;
      items.add(new SegmentItem("i" + at, random.nextInt(3) * 0.5, terminator, bias));
    }
    List<Double> hops = new ArrayList<>();
    for (int hop = 1; hop < size; hop++) {
      hops.add(random.nextInt(6) == 0 ? 0.0 : some.applyAsDouble(200));
    }
    return new SegmentCircuit(items, hops, OHMS_PER_METRE);
  }
}
