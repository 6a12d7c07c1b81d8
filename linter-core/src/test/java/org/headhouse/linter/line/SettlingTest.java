package org.headhouse.linter.line;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The quick bound, which is proved, against the closer one, which follows every edge. */
class SettlingTest {
  @Test
  void noEdgeRingsLongerThanItsEnergyAllows() {
    RandomRingingLines lines = new RandomRingingLines(17);
    for (int segment = 0; segment < 150; segment++) {
      RingingLine line = lines.next(2, 14);
      double quick = Settling.quickSeconds(line);
      WaveNetwork network = WaveNetwork.of(line, Settling.stepSeconds(line));
      Settling followed = requireNonNull(new EdgeRings(network).longest(100_000, 1e10));
      assertThat(followed.seconds()).as("%s", line).isLessThanOrEqualTo(quick);
    }
  }

  /** Of a cable that may be colder, and so of less resistance, an edge rings for longer. */
  @Test
  void aColdCableRingsForLonger() {
    RandomRingingLines lines = new RandomRingingLines(18);
    for (int segment = 0; segment < 30; segment++) {
      RingingLine line = lines.next(3, 8);
      double ohms = line.circuit().ohmsPerMetre();
      RingingLine colder = with(line, new CableSpread(0.8 * ohms, ohms));
      assertThat(Settling.quickSeconds(colder)).isGreaterThan(Settling.quickSeconds(line));
    }
  }

  private static RingingLine with(RingingLine line, CableSpread cable) {
    return new RingingLine(
        line.circuit(),
        cable,
        line.branches(),
        line.impedanceOhms(),
        line.metresPerSecond(),
        line.riseSeconds(),
        line.wantedVolts());
  }

  /** 5000 items on one pair are no line, but a file can have them. */
  @Test
  void whatIsTooMuchWorkGetsTheQuickBound() {
    List<SegmentItem> items = Collections.nCopies(5000, new SegmentItem("", 0.001, null, null));
    RingingLine line =
        new RingingLine(
            new SegmentCircuit(items, Collections.nCopies(4999, 0.1), 0.084),
            new CableSpread(0.084, 0.084),
            Collections.nCopies(5000, new RingingLine.Branch(0, 60e-12, 0)),
            120,
            2e8,
            1e-7,
            0.2);
    Settling settling = Settling.of(line, 3e8);
    assertThat(settling.worst()).isNull();
    assertThat(settling.seconds()).isEqualTo(Settling.quickSeconds(line));
  }

  /** A length of nine digits is no cable, but a file can have it. */
  @Test
  void aCableOfAMillionKilometresIsNotFollowed() {
    SegmentItem end = new SegmentItem("", 1, Terminator.resistor(120), null);
    RingingLine line =
        new RingingLine(
            new SegmentCircuit(List.of(end, end), List.of(999_999_999.0), 1e-9),
            new CableSpread(1e-9, 1e-9),
            Collections.nCopies(2, new RingingLine.Branch(0, 0, 0)),
            120,
            2e8,
            1e-7,
            0.2);
    assertThat(Settling.of(line, 3e8).worst()).isNull();
  }
}
