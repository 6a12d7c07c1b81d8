package org.headhouse.linter.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Lines of the textbook, followed by hand: an ideal source of 1 V reflects with −1, an end with
 * {@code (R − Z)/(R + Z)}. T is one delay of the line.
 */
class BounceDiagramTest {
  private static final double STEP = 1e-9;
  private static final double SPEED = 2e8;
  private static final double OHMS = 120;
  private static final int DELAY = 50;

  /** One step is passed in the time step, so an edge of less is a jump. */
  private static RingingLine line(
      @Nullable Terminator end,
      double farads,
      double ohmsPerMetre,
      RingingLine.Branch... branches) {
    RingingLine.Branch none = new RingingLine.Branch(0, 0, 0);
    RingingLine.Branch last = new RingingLine.Branch(0, 0, farads);
    List<RingingLine.Branch> all =
        branches.length == 0 ? List.of(none, last) : List.of(none, branches[0], last);
    List<Double> hops = branches.length == 0 ? List.of(10.0) : List.of(10.0, 10.0);
    List<SegmentItem> items = new ArrayList<>();
    for (int item = 0; item < all.size(); item++) {
      items.add(new SegmentItem("", 0, item == all.size() - 1 ? end : null, null));
    }
    return new RingingLine(
        new SegmentCircuit(items, hops, ohmsPerMetre),
        new CableSpread(ohmsPerMetre, ohmsPerMetre),
        all,
        OHMS,
        SPEED,
        STEP / 2,
        0.2);
  }

  /** The voltage of an item just after so many delays. */
  private static double volts(RingingLine line, int item, double delays) {
    WaveNetwork network = WaveNetwork.of(line, STEP);
    SteadyTree tree = new SteadyTree(network, 0);
    SteadyTree.State end = tree.state(1, 1, false);
    WaveRun run = new WaveRun(network);
    run.begin(end);
    int steps = (int) Math.round(delays * DELAY) + 1;
    for (int step = 1; step <= steps; step++) {
      run.advance(0, 0);
    }
    int node = network.nodeOf(item);
    return end.volts(node) + run.difference(node);
  }

  @ParameterizedTest
  @CsvSource({
    // end in ohm, then the end's voltage after T, 3T, 5T, 7T
    "1e12, 2, 0, 2, 0",
    "120, 1, 1, 1, 1",
    "1e-6, 0, 0, 0, 0",
    "40, 0.5, 0.75, 0.875, 0.9375",
    "60, 0.666667, 0.888889, 0.962963, 0.987654",
    "360, 1.5, 0.75, 1.125, 0.9375"
  })
  void theEndFollowsTheDiagram(
      double ohms, double first, double second, double third, double fourth) {
    RingingLine line = line(Terminator.resistor(ohms), 0, 0);
    assertThat(volts(line, 1, 0.96)).isCloseTo(0, within(1e-9));
    assertThat(volts(line, 1, 1)).isCloseTo(first, within(1e-5));
    assertThat(volts(line, 1, 2.96)).isCloseTo(first, within(1e-5));
    assertThat(volts(line, 1, 3)).isCloseTo(second, within(1e-5));
    assertThat(volts(line, 1, 5)).isCloseTo(third, within(1e-5));
    assertThat(volts(line, 1, 7)).isCloseTo(fourth, within(1e-5));
  }

  /** {@code 2 − exp(−t/(2·Z·C))} until the source's reflection comes back. */
  @Test
  void aMatchedResistorWithCapacitorBecomesAnOpenEnd() {
    RingingLine line = line(Terminator.resistorAndCapacitor(OHMS), 100e-12, 0);
    for (double delays : new double[] {1.2, 1.5, 2, 2.5, 2.9}) {
      double after = (delays - 1) * DELAY * STEP;
      assertThat(volts(line, 1, delays))
          .isCloseTo(2 - Math.exp(-after / (2 * OHMS * 100e-12)), within(0.02));
    }
  }

  /** Three lines of one impedance meet: 2/3 goes on. An open stub doubles it at its end. */
  @Test
  void aStubLetsTwoThirdsPass() {
    RingingLine line = line(Terminator.resistor(OHMS), 0, 0, new RingingLine.Branch(4, 0, 0));
    assertThat(volts(line, 2, 2)).isCloseTo(2 / 3.0, within(1e-9));
    assertThat(volts(line, 1, 1.4)).isCloseTo(4 / 3.0, within(1e-9));
    // What comes back out of the stub adds 2/3 of its 2/3.
    assertThat(volts(line, 2, 2.8)).isCloseTo(2 / 3.0 + 4 / 9.0, within(1e-9));
  }

  /** The front on a line with loss falls with {@code exp(−R/2Z)} (any textbook; memory). */
  @Test
  void resistanceWeakensTheFront() {
    RingingLine line = line(Terminator.resistor(OHMS), 0, 1);
    assertThat(volts(line, 1, 1)).isCloseTo(Math.exp(-20 / (2 * OHMS)), within(0.01));
  }

  /** {@code −Z·C/2} of a jump is missing behind a capacitance, for a time of Z·C/2. */
  @Test
  void aReceiverRoundsTheEdge() {
    double farads = 500e-12;
    RingingLine line = line(Terminator.resistor(OHMS), 0, 0, new RingingLine.Branch(0, farads, 0));
    for (double after : new double[] {10e-9, 30e-9, 60e-9}) {
      assertThat(volts(line, 1, 1 + after / STEP / DELAY))
          .isCloseTo(1 - Math.exp(-after / (OHMS / 2 * farads)), within(0.02));
    }
  }

  /**
   * Nothing rings: what is left of the headroom is reached on the ramp: {@code 0.675} of the half
   * that is followed, and the other half.
   */
  @Test
  void aMatchedLineSettlesWithItsEdge() {
    RingingLine jump = line(Terminator.resistor(OHMS), 0, 1e-4);
    RingingLine line =
        new RingingLine(jump.circuit(), jump.cable(), jump.branches(), OHMS, SPEED, 800e-9, 0.2);
    Settling settling = Settling.of(line, 3e8);
    assertThat(settling.seconds()).isBetween(0.8375e-6, 0.8375e-6 + 0.05e-6);
    assertThat(settling.worst()).isNotNull();
  }

  @Test
  void anOpenEndWithoutLossNeverSettles() {
    assertThat(Settling.of(line(null, 0, 0), 3e8).seconds()).isInfinite();
  }

  @Test
  void nothingSettlesPastWhatIsNotReached() {
    RingingLine line = line(Terminator.resistor(OHMS), 0, 0.1);
    RingingLine asking =
        new RingingLine(
            line.circuit(), line.cable(), line.branches(), OHMS, SPEED, line.riseSeconds(), 1.49);
    assertThat(Settling.of(asking, 3e8).seconds()).isInfinite();
    assertThat(Settling.quickSeconds(asking)).isInfinite();
  }
}
