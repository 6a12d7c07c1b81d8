package org.headhouse.linter.figures;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.line.ReceivedVoltage;
import org.headhouse.linter.line.RingingLine;
import org.headhouse.linter.line.Settling;
import org.headhouse.linter.site.Capacitance;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Termination;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/** How long the edges of one segment ring, computed when it is first asked for. For one thread. */
@Internal
public final class SegmentRinging {
  /** A receiver of a serial port looks at a bit in its middle (common practice, no source). */
  private static final double MIDDLE = 0.5;

  /** Nodes times steps that may be spent on a site, a second or two in all. */
  private static final double MOST_WORK = 3e8;

  /** How much less where the quick bound is enough for every rule, and only a figure is wanted. */
  private static final double LESS_WORK = 0.1;

  private final RingingLine line;
  private final double work;
  private final @Nullable Integer baud;
  private @Nullable Settling settling;
  private @Nullable Double quickSeconds;

  SegmentRinging(RingingLine line, double work, @Nullable Integer baud) {
    this.line = line;
    this.work = work;
    this.baud = baud;
  }

  /**
   * Null where a length, a terminator, the cable or a stub is not known, there is but one item, or
   * the signal is too weak anyway.
   *
   * @param segments how many the site has
   */
  static @Nullable SegmentRinging of(SegmentLine segment, int segments, SitePolicy policy) {
    SegmentNetwork network = segment.network();
    Double impedance = segment.impedanceOhms();
    ReceivedVoltage weakest = network == null ? null : network.weakestReceivedAtWorst();
    if (network == null
        || impedance == null
        || impedance <= 0
        || weakest == null
        || weakest.volts() <= policy.wantedSignalVolts()) {
      return null;
    }
    List<RingingLine.Branch> branches = new ArrayList<>(segment.segment().items().size());
    double rise = Double.POSITIVE_INFINITY;
    for (ChainItem item : segment.segment().items()) {
      Setting<Length> stub = segment.segment().connection(item).stub();
      if (stub.isFaulty()) {
        return null;
      }
      branches.add(branch(segment, item, stub.orNull(), policy.usualInterface()));
      rise = Math.min(rise, riseSeconds(item, policy.usualInterface()));
    }
    return new SegmentRinging(
        new RingingLine(
            network.circuit(),
            network.spreadOfReadings().cable(),
            branches,
            impedance,
            segment.metresPerSecond(),
            rise,
            policy.wantedSignalVolts()),
        MOST_WORK / segments,
        segment.baud());
  }

  private static RingingLine.Branch branch(
      SegmentLine segment, ChainItem item, @Nullable Length stub, UsualInterface usual) {
    Capacitance receiver = item.type().receiverCapacitance().orNull();
    Termination termination = segment.segment().termination(item).orNull();
    Capacitance blocking = termination == null ? null : termination.capacitance();
    return new RingingLine.Branch(
        stub == null ? 0 : stub.metres(),
        receiver == null ? usual.receiverFarads() : receiver.farads(),
        blocking == null ? 0 : blocking.farads());
  }

  private static double riseSeconds(ChainItem item, UsualInterface usual) {
    Interval rise = item.type().riseTime().orNull();
    return rise == null || rise.seconds() <= 0 ? usual.riseSeconds() : rise.seconds();
  }

  /** What is computed with. */
  public RingingLine line() {
    return line;
  }

  /** What may be spent on following its edges. */
  double work() {
    return work;
  }

  /** How long a bit is; null where the rate is not known. */
  public @Nullable Double bitSeconds() {
    return baud == null || baud <= 0 ? null : 1.0 / baud;
  }

  /** The rate in bit/s; null where it is not known. */
  public @Nullable Integer baud() {
    return baud;
  }

  /** The closer bound. */
  public Settling settling() {
    Settling known = settling;
    if (known == null) {
      known = Settling.of(line, mayDisturb() ? work : LESS_WORK * work);
      settling = known;
    }
    return known;
  }

  /**
   * Whether some edge may not have settled when a receiver looks at the bit; no where the rate is
   * not known. The quick bound is asked first, and is enough for most lines.
   */
  public boolean isDisturbed() {
    Double bit = bitSeconds();
    return bit != null && mayDisturb() && settling().seconds() > MIDDLE * bit;
  }

  /** Whether the quick bound leaves it open. */
  private boolean mayDisturb() {
    Double bit = bitSeconds();
    return bit != null && quickSeconds() > MIDDLE * bit;
  }

  private double quickSeconds() {
    Double known = quickSeconds;
    if (known == null) {
      known = Settling.quickSeconds(line);
      quickSeconds = known;
    }
    return known;
  }

  /** When a receiver looks at a bit. */
  public static double middleSeconds(double bitSeconds) {
    return MIDDLE * bitSeconds;
  }
}
