package org.headhouse.linter.line;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.headhouse.linter.line.SpiceNetlist.Parts;
import org.headhouse.linter.line.SpiceNetlist.Placed;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is computed of 400 segments against the circuit simulator ngspice, which is given every
 * resistor and every supply of them.
 */
class NetworkAgainstNgspiceTest {
  private static final double RELATIVE = 1e-8;
  private static final int SEGMENTS = 400;
  private static final int IN_ONE_RUN = 40;
  private static final double METER_AMPERES = 1e-3;

  /** Looks at the voltages of one segment once they are there. */
  private interface Check {
    void against(Map<String, Double> voltages);
  }

  @Test
  @Tag("long")
  void theSimulatorAgrees(@TempDir Path folder) throws Exception {
    Ngspice ngspice = Ngspice.in(folder);
    Random random = new Random(81);
    List<SegmentCircuit> circuits = RandomSegments.of(82, SEGMENTS, 2, 30).toList();
    for (int from = 0; from < SEGMENTS; from += IN_ONE_RUN) {
      SpiceNetlist netlist = new SpiceNetlist();
      List<Check> checks = new ArrayList<>();
      for (SegmentCircuit circuit : circuits.subList(from, from + IN_ONE_RUN)) {
        checks.add(idle(circuit, netlist));
        checks.add(received(circuit, netlist));
        checks.add(driverLoad(circuit, random.nextInt(circuit.items().size()), netlist));
        checks.add(pairResistance(circuit, random.nextInt(circuit.items().size()), netlist));
        checks.add(someCorner(circuit, random, netlist));
        checks.add(worstCornerOfLast(circuit, netlist));
      }
      Map<String, Double> voltages = ngspice.operatingPoint(netlist.elements());
      checks.forEach(check -> check.against(voltages));
    }
  }

  private static Check idle(SegmentCircuit circuit, SpiceNetlist netlist) {
    List<IdleLevels> levels = IdleLevels.ofAllItems(circuit);
    List<Double> idle = IdleVoltage.ofAllItems(circuit);
    Placed placed = netlist.place(circuit, Parts.STEADY);
    return voltages -> {
      for (int item = 0; levels != null && idle != null && item < levels.size(); item++) {
        assertClose(levels.get(item).d1Volts(), placed.d1Volts(voltages, item), circuit);
        assertClose(levels.get(item).d0Volts(), placed.d0Volts(voltages, item), circuit);
        assertClose(idle.get(item), placed.volts(voltages, item), circuit);
      }
    };
  }

  /** From both ends, of which one is the weakest sender for every item. */
  private static Check received(SegmentCircuit circuit, SpiceNetlist netlist) {
    int last = circuit.items().size() - 1;
    List<ReceivedVoltage> weakest = ReceivedVoltage.weakestAtEachItem(circuit);
    Placed fromFirst = netlist.place(circuit, Parts.SIGNAL).drivenAt(0, -1.5);
    Placed fromLast = netlist.place(circuit, Parts.SIGNAL).drivenAt(last, -1.5);
    return voltages -> {
      for (int item = 0; item <= last; item++) {
        double first = item == 0 ? 1.5 : -fromFirst.volts(voltages, item);
        double second = item == last ? 1.5 : -fromLast.volts(voltages, item);
        assertThat(weakest.get(item).volts())
            .as("%s", circuit)
            .isCloseTo(Math.min(first, second), within(1e-8));
      }
    };
  }

  private static Check driverLoad(SegmentCircuit circuit, int item, SpiceNetlist netlist) {
    double load = DriverLoad.ofAllItems(circuit).get(item);
    Placed placed = netlist.place(circuit, Parts.SIGNAL_UNPOWERED).measuredAt(item, METER_AMPERES);
    return voltages -> assertClose(load, placed.volts(voltages, item) / METER_AMPERES, circuit);
  }

  private static Check pairResistance(SegmentCircuit circuit, int item, SpiceNetlist netlist) {
    PairResistance resistance = PairResistance.at(circuit, item);
    Placed low = netlist.place(circuit, Parts.STEADY_UNPOWERED).measuredAt(item, METER_AMPERES);
    boolean closed = Double.isFinite(resistance.highOhms());
    Placed high =
        closed ? netlist.place(circuit, Parts.TERMINATORS).measuredAt(item, METER_AMPERES) : low;
    return voltages -> {
      assertClose(resistance.lowOhms(), low.volts(voltages, item) / METER_AMPERES, circuit);
      if (closed) {
        assertClose(resistance.highOhms(), high.volts(voltages, item) / METER_AMPERES, circuit);
      }
    };
  }

  private static SegmentSpread spread(SegmentCircuit circuit) {
    double ohms = circuit.ohmsPerMetre();
    return new SegmentSpread(circuit, new CableSpread(0.98 * ohms, 1.09 * ohms), Tolerances.USUAL);
  }

  /** At any corner no voltage is under the worst, and no reading outside its range. */
  private static Check someCorner(SegmentCircuit circuit, Random random, SpiceNetlist netlist) {
    SegmentSpread spread = spread(circuit);
    SegmentCircuit corner =
        SpiceNetlist.changed(
            circuit,
            terminator -> terminator.resistorOhms() * off(random),
            bias ->
                new BiasResistors(bias.eachOhms() * off(random), bias.supplyVolts() * off(random)),
            hop -> circuit.ohmsPerMetre() * (random.nextBoolean() ? 0.98 : 1.09));
    int last = circuit.items().size() - 1;
    int item = random.nextInt(last + 1);
    List<Double> idleVolts = WorstCorner.idleVolts(spread);
    AcceptedReadings.IdleRange range = AcceptedReadings.idleVolts(spread, item);
    List<ReceivedVoltage> weakest = WorstCorner.weakestAtEachItem(spread);
    double low = AcceptedReadings.pairResistances(spread).get(item).lowOhms();
    Placed idle = netlist.place(corner, Parts.STEADY);
    Placed driven = netlist.place(corner, Parts.SIGNAL).drivenAt(0, -1.5);
    Placed unpowered =
        netlist.place(corner, Parts.STEADY_UNPOWERED).measuredAt(item, METER_AMPERES);
    return voltages -> {
      for (int at = 0; at <= last; at++) {
        if (idleVolts != null) {
          assertNotUnder(idle.volts(voltages, at), idleVolts.get(at), circuit);
        }
        if (at > 0) {
          assertNotUnder(-driven.volts(voltages, at), weakest.get(at).volts(), circuit);
        }
      }
      if (range != null) {
        assertNotUnder(idle.volts(voltages, item), range.lowVolts(), circuit);
        assertNotUnder(range.highVolts(), idle.volts(voltages, item), circuit);
      }
      assertNotUnder(unpowered.volts(voltages, item) / METER_AMPERES, low, circuit);
    };
  }

  private static double off(Random random) {
    return random.nextBoolean() ? 0.95 : 1.05;
  }

  /**
   * With one bias the worst corner of the last item can be named: all that lies between the bias
   * and it at its greatest, and what it loses to the others at its worst. So can that of what it
   * receives from the first.
   */
  private static Check worstCornerOfLast(SegmentCircuit circuit, SpiceNetlist netlist) {
    int last = circuit.items().size() - 1;
    int[] biased =
        IntStream.rangeClosed(0, last)
            .filter(item -> circuit.items().get(item).bias() != null)
            .toArray();
    if (biased.length != 1) {
      return voltages -> {};
    }
    SegmentSpread spread = spread(circuit);
    double lowest = requireNonNull(WorstCorner.idleVolts(spread)).get(last);
    ReceivedVoltage weakest = WorstCorner.weakestAtEachItem(spread).get(last);
    SegmentCircuit idleCorner =
        SpiceNetlist.changed(
            circuit,
            terminator -> 0.95 * terminator.resistorOhms(),
            bias -> new BiasResistors(1.05 * bias.eachOhms(), 0.95 * bias.supplyVolts()),
            hop -> circuit.ohmsPerMetre() * (hop >= biased[0] ? 1.09 : 0.98));
    SegmentCircuit drivenCorner =
        SpiceNetlist.changed(
            circuit,
            terminator -> 0.95 * terminator.resistorOhms(),
            bias -> new BiasResistors(0.95 * bias.eachOhms(), 1.05 * bias.supplyVolts()),
            hop -> circuit.ohmsPerMetre() * 1.09);
    Placed idle = netlist.place(idleCorner, Parts.STEADY);
    Placed driven = netlist.place(drivenCorner, Parts.SIGNAL).drivenAt(0, -1.5);
    return voltages -> {
      assertClose(lowest, idle.volts(voltages, last), circuit);
      double received = -driven.volts(voltages, last);
      // Where the bias overrules the driver on the way, another corner is worse.
      if (received > 0) {
        assertClose(weakest.volts(), received, circuit);
      }
    };
  }

  private static void assertNotUnder(double volts, double least, SegmentCircuit circuit) {
    assertThat(volts)
        .as("%s", circuit)
        .isGreaterThanOrEqualTo(least - RELATIVE * Math.abs(least) - 1e-9);
  }

  private static void assertClose(double computed, double simulated, SegmentCircuit circuit) {
    Offset<Double> near = within(RELATIVE * Math.abs(simulated) + 1e-10);
    assertThat(computed).as("%s", circuit).isCloseTo(simulated, near);
  }
}
