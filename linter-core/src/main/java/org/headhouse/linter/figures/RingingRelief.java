package org.headhouse.linter.figures;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.headhouse.linter.line.RingingLine;
import org.headhouse.linter.line.SegmentCircuit;
import org.headhouse.linter.line.SegmentItem;
import org.headhouse.linter.line.Settling;
import org.headhouse.linter.line.Terminator;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.stability.Internal;

/** What lets the edges of a segment settle before the middle of a bit; each change alone. */
@Internal
public final class RingingRelief {
  /** How closely the length of stubs is looked for. */
  private static final int HALVINGS = 6;

  /** How many changes are tried at most. */
  private static final int TRIALS = HALVINGS + 2;

  private final SegmentLine segment;
  private final SegmentRinging ringing;
  private final double middleSeconds;

  private RingingRelief(SegmentLine segment, SegmentRinging ringing, double bitSeconds) {
    this.segment = segment;
    this.ringing = ringing;
    this.middleSeconds = SegmentRinging.middleSeconds(bitSeconds);
  }

  /** The changes in words, with the values to set. */
  public static String words(SegmentLine segment, SegmentRinging ringing, Site site) {
    RingingRelief relief =
        new RingingRelief(segment, ringing, requireNonNull(ringing.bitSeconds()));
    List<String> changes = new ArrayList<>();
    relief.withTerminators(changes);
    relief
        .longestStubMetres()
        .ifPresent(
            metres ->
                changes.add(
                    metres < 0.1
                        ? "run the trunk itself through the units on stubs"
                        : "shorten the stubs to " + SiteMeasure.of(site).atMost(metres)));
    relief
        .nextLowerBaud(site)
        .ifPresent(baud -> changes.add("set all units and the line to " + baud + " bit/s"));
    return changes.isEmpty()
        ? "divide the segment with a repeater, and look for stubs and terminators that can be"
            + " better"
        : String.join(", or ", changes);
  }

  /** The ends that would have a resistor of the cable's impedance, with nothing in series. */
  private void withTerminators(List<String> changes) {
    double ohms = ringing.line().impedanceOhms();
    SegmentCircuit circuit = ringing.line().circuit();
    List<ChainItem> changed = new ArrayList<>(2);
    List<SegmentItem> items = new ArrayList<>(circuit.items());
    List<RingingLine.Branch> branches = new ArrayList<>(ringing.line().branches());
    for (int end : new int[] {0, items.size() - 1}) {
      SegmentItem item = items.get(end);
      Terminator fitted = item.terminator();
      if (fitted == null || fitted.capacitorInSeries() || fitted.resistorOhms() != ohms) {
        RingingLine.Branch branch = branches.get(end);
        changed.add(segment.segment().items().get(end));
        items.set(
            end,
            new SegmentItem(item.name(), item.unitLoads(), Terminator.resistor(ohms), item.bias()));
        branches.set(end, new RingingLine.Branch(branch.stubMetres(), branch.receiverFarads(), 0));
      }
    }
    SegmentCircuit other =
        new SegmentCircuit(items, circuit.hopLengthsMetres(), circuit.ohmsPerMetre());
    if (!changed.isEmpty() && settles(other, branches)) {
      changes.add(
          "isolate the supply and fit a terminator of "
              + Shown.resistor(ohms)
              + " without a capacitor at "
              + changed.stream().map(ChainItem::called).collect(Collectors.joining(" and "))
              + " (check that the idle voltage is still high enough)");
    }
  }

  private boolean settles(SegmentCircuit circuit, List<RingingLine.Branch> branches) {
    RingingLine line = ringing.line();
    RingingLine other =
        new RingingLine(
            circuit,
            line.cable(),
            branches,
            line.impedanceOhms(),
            line.metresPerSecond(),
            line.riseSeconds(),
            line.wantedVolts());
    return Settling.of(other, ringing.work() / TRIALS).seconds() <= middleSeconds;
  }

  /** How long every stub may be at most; empty where even none at all does not help. */
  private OptionalDouble longestStubMetres() {
    double longest = 0;
    for (RingingLine.Branch branch : ringing.line().branches()) {
      longest = Math.max(longest, branch.stubMetres());
    }
    if (longest == 0 || !settlesWithStubs(0)) {
      return OptionalDouble.empty();
    }
    double enough = 0;
    double tooLong = longest;
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middle = (enough + tooLong) / 2;
      if (settlesWithStubs(middle)) {
        enough = middle;
      } else {
        tooLong = middle;
      }
    }
    return OptionalDouble.of(enough);
  }

  private boolean settlesWithStubs(double mostMetres) {
    return settles(
        ringing.line().circuit(),
        ringing.line().branches().stream()
            .map(
                branch ->
                    new RingingLine.Branch(
                        Math.min(mostMetres, branch.stubMetres()),
                        branch.receiverFarads(),
                        branch.terminatorFarads()))
            .toList());
  }

  /** The highest rate under the present one at which a bit is long enough. */
  private OptionalInt nextLowerBaud(Site site) {
    double settled = ringing.settling().seconds();
    return LineSettings.BAUD_RATES.stream()
        .mapToInt(Integer::intValue)
        .filter(baud -> SegmentRinging.middleSeconds(1.0 / baud) >= settled)
        .filter(baud -> TrafficFit.allHave(site, baud))
        .max();
  }
}
