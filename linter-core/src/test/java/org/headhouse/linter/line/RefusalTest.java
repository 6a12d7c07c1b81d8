package org.headhouse.linter.line;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.headhouse.linter.line.Segments.ohms;
import static org.headhouse.linter.line.Segments.unit;

import java.util.List;
import java.util.Map;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Numbers that no line can have. */
class RefusalTest {
  private static final SegmentItem UNIT = unit(1, null);
  private static final SerialFormat AT_9600 = new SerialFormat(9600, true, 1);
  private static final double NAN = Double.NaN;

  private static final Map<String, ThrowingCallable> REFUSED =
      Map.ofEntries(
          Map.entry("AWG 41", () -> Wire.awg(41)),
          Map.entry("AWG -1", () -> Wire.awg(-1)),
          Map.entry("area 0", () -> Wire.squareMillimetres(0)),
          Map.entry("area infinite", () -> new Wire(Double.POSITIVE_INFINITY, 1)),
          Map.entry("absolute zero", () -> Wire.awg(24).resistanceOhmsPerMetre(-273)),
          Map.entry("terminator 0", () -> ohms(0)),
          Map.entry("terminator NaN", () -> ohms(NAN)),
          Map.entry("bias 0", () -> new BiasResistors(0, 5)),
          Map.entry("supply negative", () -> new BiasResistors(560, -5)),
          Map.entry("tolerance of a bias", () -> new BiasResistors(560, 5, 1.0)),
          Map.entry("tolerance negative", () -> new Tolerances(-0.01, 0, 0, 0)),
          Map.entry("tolerance of all of it", () -> new Tolerances(0, 0, 1, 0)),
          Map.entry("spread the wrong way", () -> new CableSpread(0.2, 0.1)),
          Map.entry("meter of no accuracy", () -> new MeterAccuracy(1, 0)),
          Map.entry("meter negative", () -> new MeterAccuracy(0, -1)),
          Map.entry("limit negative", () -> new MeterAccuracy(0, 0).leastReadingFor(-1)),
          Map.entry("unit load negative", () -> unit(-1, null)),
          Map.entry("unit load infinite", () -> unit(1 / 0.0, null)),
          Map.entry("unit load NaN", () -> unit(NAN, null)),
          Map.entry("no item", () -> new SegmentCircuit(List.of(), List.of(), 0.1)),
          Map.entry("hop missing", () -> circuit(List.of())),
          Map.entry("hop too many", () -> circuit(List.of(1.0, 1.0))),
          Map.entry("hop infinite", () -> circuit(List.of(1 / 0.0))),
          Map.entry("hop negative", () -> circuit(List.of(-1.0))),
          Map.entry("cable negative", () -> new SegmentCircuit(List.of(UNIT), List.of(), -0.1)),
          Map.entry(
              "wanted 0",
              () -> BiasSizing.largestOhms(SegmentSpread.none(circuit(List.of(1.0))), 0, 5, 0)),
          Map.entry(
              "supply 0",
              () -> BiasSizing.largestOhms(SegmentSpread.none(circuit(List.of(1.0))), 0, 0, 1)),
          Map.entry(
              "reach of 0 V",
              () -> CableReach.longestScale(SegmentSpread.none(circuit(List.of(1.0))), 0)),
          Map.entry("resistor under 1 ohm", () -> PreferredResistor.e24AtMost(0.99)),
          Map.entry("resistor infinite", () -> PreferredResistor.e24AtMost(1 / 0.0)),
          Map.entry("baud 0", () -> new SerialFormat(0, true, 1)),
          Map.entry("stop bits 0", () -> new SerialFormat(9600, true, 0)),
          Map.entry("stop bits 3", () -> new SerialFormat(9600, true, 3)),
          Map.entry("no register to send", () -> new BroadcastLoad(0, 5, 0.1)),
          Map.entry("broadcast period 0", () -> new BroadcastLoad(1, 0, 0.1)),
          Map.entry("turnaround negative", () -> new BroadcastLoad(1, 5, -0.1)),
          Map.entry("no register to read", () -> new PollLoad(0, 1, 5, 0, 1, 0)),
          Map.entry("no zone", () -> new PollLoad(1, 0, 5, 0, 1, 0)),
          Map.entry("poll period 0", () -> new PollLoad(1, 1, 0, 0, 1, 0)),
          Map.entry("processing negative", () -> new PollLoad(1, 1, 5, -1, 1, 0)),
          Map.entry("timeout 0", () -> new PollLoad(1, 1, 5, 0, 0, 0)),
          Map.entry("retries negative", () -> new PollLoad(1, 1, 5, 0, 1, -1)),
          Map.entry("rise time 0", () -> StubLimit.metres(0, 0.7)),
          Map.entry("processing before", () -> TimeoutNeed.of(AT_9600, 1, -1, 0, 0)),
          Map.entry("latency negative", () -> TimeoutNeed.of(AT_9600, 1, 0, -1, 0)),
          Map.entry("other negative", () -> TimeoutNeed.of(AT_9600, 1, 0, 0, -1)),
          Map.entry("no register to wait for", () -> TimeoutNeed.of(AT_9600, 0, 0, 0, 0)),
          Map.entry(
              "lost negative",
              () -> ReadingAge.worst(AT_9600, new BroadcastLoad(1, 5, 0.1), List.of(), -1, false)),
          Map.entry("capacitor 0", () -> TerminatorTiming.of(120, 0, 9600, 10, 0.66)),
          Map.entry("rate 0 beside it", () -> TerminatorTiming.of(120, 1e-9, 0, 10, 0.66)),
          Map.entry("length beside it", () -> TerminatorTiming.of(120, 1e-9, 9600, -1, 0.66)),
          Map.entry("velocity 0", () -> StubLimit.metres(1e-9, 0)));

  @TestFactory
  List<DynamicTest> areRefused() {
    return REFUSED.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .map(
            entry ->
                DynamicTest.dynamicTest(
                    entry.getKey(),
                    () -> assertThatIllegalArgumentException().isThrownBy(entry.getValue())))
        .toList();
  }

  private static SegmentCircuit circuit(List<Double> hopLengthsMetres) {
    return new SegmentCircuit(List.of(UNIT, UNIT), hopLengthsMetres, 0.1);
  }
}
