package org.headhouse.linter.figures;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.headhouse.linter.line.DriverLoad;
import org.headhouse.linter.line.IdleVoltage;
import org.headhouse.linter.line.LengthLimit;
import org.headhouse.linter.line.Levels;
import org.headhouse.linter.line.SegmentCircuit;
import org.headhouse.linter.line.SegmentFigures;
import org.headhouse.linter.line.StubLimit;
import org.headhouse.linter.line.Wire;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.Cable;
import org.headhouse.linter.site.Capacitance;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.IdleBias;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Segment;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Temperature;
import org.headhouse.linter.site.Termination;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/** One segment of a site with its circuit and its figures. For one thread at a time. */
public final class SegmentLine {
  private static final double USUAL_CELSIUS = 20;
  private static final double SPEED_OF_LIGHT = StubLimit.SPEED_OF_LIGHT_METRES_PER_SECOND;

  /** Sums of eighths of a unit load are exact, those of thirds are not. */
  private static final double ROUNDING_UNIT_LOADS = 1e-9;

  /** Sums of tenths of a metre are not exact. */
  private static final double ROUNDING_METRES = 1e-6;

  private final Segment segment;
  private final @Nullable LineSettings line;
  private final List<Double> knownHopMetres;
  private final double knownMetres;
  private final @Nullable List<Double> hopMetres;
  private final boolean endsChain;
  private final @Nullable Unit head;
  private final int measuredAt;
  private final SitePolicy policy;
  private @Nullable List<Bias> biases;
  private @Nullable Double unitLoads;
  private final int segments;
  private @Nullable SegmentNetwork network;
  private boolean networkKnown;
  private @Nullable SegmentRinging ringing;
  private boolean ringingKnown;

  SegmentLine(Segment segment, Site site, SitePolicy policy) {
    this.segment = segment;
    this.policy = policy;
    this.segments = site.segments().size();
    this.line = site.line().orNull();
    this.endsChain = segment.last().index() == site.items().size() - 1;
    this.knownHopMetres = knownHopMetres(segment);
    this.knownMetres = sum(knownHopMetres);
    this.hopMetres = isKnownThroughout(segment) ? knownHopMetres : null;
    this.head = site.head();
    this.measuredAt = MeasuredItems.near(segment, head);
  }

  private static boolean isKnownThroughout(Segment segment) {
    for (ChainItem item : beforeLast(segment)) {
      if (!item.cableToNext().isGiven()) {
        return false;
      }
    }
    return true;
  }

  /** With 0 where a length is not known. */
  private static List<Double> knownHopMetres(Segment segment) {
    List<Double> metres = new ArrayList<>();
    for (ChainItem item : beforeLast(segment)) {
      Length length = item.cableToNext().orNull();
      metres.add(length == null ? 0 : length.metres());
    }
    return List.copyOf(metres);
  }

  private static double sum(List<Double> hops) {
    DoubleSummaryStatistics lengths = new DoubleSummaryStatistics();
    for (double metres : hops) {
      lengths.accept(metres);
    }
    return lengths.getSum();
  }

  private static List<ChainItem> beforeLast(Segment segment) {
    return segment.items().subList(0, segment.items().size() - 1);
  }

  /** The segment of the chain. */
  public Segment segment() {
    return segment;
  }

  /** The items whose cable to the next has no length written. */
  public List<ChainItem> withoutLength() {
    List<ChainItem> without = new ArrayList<>(0);
    for (ChainItem item : beforeLast(segment)) {
      if (item.cableToNext().isMissing()) {
        without.add(item);
      }
    }
    return without;
  }

  /** The cable from each item to the next, in metres; null where a length is not known. */
  public @Nullable List<Double> hopMetres() {
    return hopMetres;
  }

  /** The cable from the first item to the last, in metres; null where a length is not known. */
  public @Nullable Double lengthMetres() {
    return hopMetres == null ? null : knownMetres();
  }

  /** What is known of that length: the cable is as long at least. */
  public double knownMetres() {
    return knownMetres;
  }

  /** The bias that is fitted in this segment, in the order of the file. */
  public List<Bias> biases() {
    List<Bias> known = biases;
    if (known == null) {
      known = line == null ? List.of() : SegmentBias.of(segment, endsChain, line);
      biases = known;
    }
    return known;
  }

  /** Those of {@link #biases()} that are more than the weak pulls that a device has built in. */
  public List<Bias> holdingBiases() {
    List<Bias> holding = new ArrayList<>(1);
    for (Bias bias : biases()) {
      if (!isWeakPull(bias)) {
        holding.add(bias);
      }
    }
    return holding;
  }

  private static boolean isWeakPull(Bias bias) {
    Resistance each = bias.resistors().orNull();
    return each != null && each.ohms() > Levels.WEAK_PULL_OHMS;
  }

  /** Whether an item of the segment needs bias. */
  public boolean needsBias() {
    for (ChainItem item : segment.items()) {
      if (item.idleBias(segment.side(item)).is(IdleBias.NEEDED)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a terminator passes direct current, so that the pair has a resistance. */
  public boolean conductsSteadily() {
    for (ChainItem item : segment.items()) {
      if (steadyTerminator(item) != null) {
        return true;
      }
    }
    return false;
  }

  /** The terminator of an item where it passes direct current, else null. */
  public @Nullable Resistance steadyTerminator(ChainItem item) {
    Termination termination = segment.termination(item).orNull();
    return termination != null && termination.conductsSteadily() ? termination.resistance() : null;
  }

  /** What a meter may show; for one thread at a time. */
  @Internal
  public SegmentReadings readings() {
    return new SegmentReadings(this, policy);
  }

  /** The index of the item of this segment that a bias is fitted at, or -1. */
  public int itemOf(Bias bias) {
    return SegmentBias.itemOf(bias, segment, endsChain);
  }

  /** The sum of the unit loads of all items; one whose load is not known counts as one. */
  public double unitLoads() {
    Double known = unitLoads;
    if (known == null) {
      double sum = 0;
      for (ChainItem item : segment.items()) {
        sum += unitLoad(item);
      }
      known = sum;
      unitLoads = known;
    }
    return known;
  }

  private double unitLoad(ChainItem item) {
    return item.unitLoad(segment.side(item));
  }

  /** What the physics says of the segment; null where a part of what it needs is not known. */
  @Internal
  public @Nullable SegmentNetwork network() {
    if (!networkKnown) {
      SegmentParts parts =
          line == null || hopMetres == null
              ? null
              : Circuits.of(this, line, hopMetres, policy.tolerances());
      network =
          parts == null
              ? null
              : new SegmentNetwork(parts, celsius(), policy.tolerances(), measuredAt);
      networkKnown = true;
    }
    return network;
  }

  /**
   * How long its edges ring; null where a part of what that needs is not known, and where a fault
   * of the levels has a result of its own.
   */
  @Internal
  public @Nullable SegmentRinging ringing() {
    if (!ringingKnown) {
      ringing = overloadedDriver() == null ? SegmentRinging.of(this, segments, policy) : null;
      ringingKnown = true;
    }
    return ringing;
  }

  /** What the formulas need of the segment; null where a part of it is not known. */
  public @Nullable SegmentCircuit circuit() {
    SegmentNetwork known = network();
    return known == null ? null : known.circuit();
  }

  /** The figures; null where a part of what they need is not known. */
  public @Nullable SegmentFigures figures() {
    SegmentNetwork known = network();
    return known == null ? null : known.figures();
  }

  /** One conductor of the cable; null where its size is not known. */
  @Internal
  public @Nullable Wire wire() {
    return line == null ? null : Circuits.wire(line);
  }

  /** The index of the item where the pair resistance is measured: the head unit, else the first. */
  public int measuredAt() {
    return measuredAt;
  }

  /** The places of the segment at which a meter has to be held. */
  @Internal
  public List<MeasuringPlace> measuringPlaces() {
    return MeasuredItems.of(segment, head).stream()
        .map(index -> new MeasuringPlace(this, index))
        .toList();
  }

  /**
   * Whether a fault that another rule reports makes the voltages meaningless: a terminator between
   * the ends, a second bias point, more than 32 unit loads, or a cable beyond every limit. They
   * change once it is fixed.
   */
  public boolean hasFaultThatDistortsFigures() {
    return hasTerminatorBetweenEnds()
        || holdingBiases().size() > 1
        || isOverloaded()
        || isBeyondEveryLimit();
  }

  private boolean hasTerminatorBetweenEnds() {
    List<ChainItem> items = segment.items();
    for (int i = 1; i < items.size() - 1; i++) {
      Termination termination = segment.termination(items.get(i)).orNull();
      if (termination != null && termination.isFitted()) {
        return true;
      }
    }
    return false;
  }

  /** Whether the segment carries more than the 32 unit loads that a driver moves. */
  public boolean isOverloaded() {
    return unitLoads() > Levels.MOST_UNIT_LOADS + ROUNDING_UNIT_LOADS;
  }

  private boolean isBeyondEveryLimit() {
    return isLongerThan(longestMetres());
  }

  /** Whether the cable is known to be longer than some metres. */
  public boolean isLongerThan(double metres) {
    return knownMetres() > metres + ROUNDING_METRES;
  }

  /** The rate in bit/s; null where it is not known. */
  @Nullable Integer baud() {
    return line == null ? null : line.baud().orNull();
  }

  /** 1200 m, or less where the rate asks for it. */
  private double longestMetres() {
    Integer baud = baud();
    return baud == null
        ? LengthLimit.LONGEST_METRES
        : Math.min(LengthLimit.LONGEST_METRES, LengthLimit.optimisticMetres(baud));
  }

  /**
   * Whether the bias, in a segment that is otherwise in order, leaves an item of an idle line under
   * what a receiver needs.
   */
  public boolean isIdleUnderThreshold() {
    SegmentFigures known = hasFaultThatDistortsFigures() ? null : figures();
    IdleVoltage lowest = known == null ? null : known.lowestIdle();
    return lowest != null && lowest.volts() < Levels.RECEIVER_THRESHOLD_VOLTS;
  }

  /**
   * The driver that works into too little; null where all have enough, where it is not known, and
   * where the cause has a result of its own: too many loads, or too small resistors of bias.
   */
  public @Nullable DriverLoad overloadedDriver() {
    SegmentNetwork known = isOverloaded() || hasLowBias() ? null : network();
    return known == null ? null : known.overloadedDriver();
  }

  private boolean hasLowBias() {
    for (Bias bias : biases()) {
      Resistance each = bias.resistors().orNull();
      if (each != null && each.ohms() < Levels.LEAST_BIAS_OHMS) {
        return true;
      }
    }
    return false;
  }

  /** The impedance of the cable; null where it is not known. */
  public @Nullable Double impedanceOhms() {
    Cable cable = line == null ? null : line.cable().orNull();
    Resistance impedance = cable == null ? null : cable.impedance().orNull();
    return impedance == null ? null : impedance.ohms();
  }

  /** The ends whose terminator has less than the impedance of the cable. */
  public List<ChainItem> endsUnderImpedance() {
    Double impedance = impedanceOhms();
    return impedance == null ? List.of() : endsUnder(impedance);
  }

  /** The ends whose terminator has less than some ohms. */
  public List<ChainItem> endsUnder(double ohms) {
    List<ChainItem> ends = new ArrayList<>(0);
    for (ChainItem end : List.of(segment.first(), segment.last())) {
      Termination termination = segment.termination(end).orNull();
      Resistance resistance = termination == null ? null : termination.resistance();
      if (resistance != null && resistance.ohms() < ohms) {
        ends.add(end);
      }
    }
    return ends;
  }

  /**
   * How long a branch may be at all: 20 m, or less where the quickest line driver of the segment
   * asks for it.
   */
  public double longestStubMetres() {
    ChainItem quickest = quickestDriver();
    return StubLimit.longestMetres(
        quickest == null ? null : riseSeconds(quickest), velocityFactor());
  }

  /** The item with the quickest line driver; every stub of the segment reflects its signal. */
  public @Nullable ChainItem quickestDriver() {
    ChainItem quickest = null;
    for (ChainItem item : segment.items()) {
      if (riseSeconds(item)
          < (quickest == null ? Double.POSITIVE_INFINITY : riseSeconds(quickest))) {
        quickest = item;
      }
    }
    return quickest;
  }

  /** Infinite where it is not known. */
  private static double riseSeconds(ChainItem item) {
    Interval rise = item.type().riseTime().orNull();
    return rise == null || rise.seconds() <= 0 ? Double.POSITIVE_INFINITY : rise.seconds();
  }

  /** The speed of a signal in the cable as a share of that of light, as it says or as usual. */
  public double velocityFactor() {
    Cable cable = line == null ? null : line.cable().orNull();
    Double own = cable == null ? null : cable.velocityFactor().orNull();
    double usual =
        policy.velocityFactor() > 0 ? policy.velocityFactor() : StubLimit.LEAST_VELOCITY_FACTOR;
    return own == null || own <= 0 ? usual : own;
  }

  /**
   * How fast a signal runs in the cable. Where impedance and capacitance say something else than
   * the velocity factor, the slower: then an edge rings for longer.
   */
  double metresPerSecond() {
    Cable cable = line == null ? null : line.cable().orNull();
    Capacitance held = cable == null ? null : cable.capacitance().orNull();
    Double impedance = impedanceOhms();
    double byFactor = velocityFactor() * SPEED_OF_LIGHT;
    if (cable == null
        || held == null
        || impedance == null
        || held.farads() <= 0
        || impedance <= 0) {
      return byFactor;
    }
    double byCapacitance = 1 / (impedance * held.farads());
    double most = cable.velocityFactor().isGiven() ? byFactor : SPEED_OF_LIGHT;
    return Math.min(most, byCapacitance);
  }

  /** The last item up to which no more than some metres of cable are known; the first at least. */
  public ChainItem lastWithinMetres(double metres) {
    List<Double> hops = knownHopMetres;
    double reached = 0;
    int at = 0;
    while (at < hops.size() && reached + hops.get(at) <= metres + ROUNDING_METRES) {
      reached += hops.get(at);
      at++;
    }
    return segment.items().get(at);
  }

  /**
   * The last item up to which the sum of loads is at most a number of unit loads; at least the
   * first.
   */
  public ChainItem lastWithinUnitLoads(double most) {
    double sum = 0;
    ChainItem last = segment.first();
    for (ChainItem item : segment.items()) {
      sum += unitLoad(item);
      if (sum > most + ROUNDING_UNIT_LOADS) {
        return last;
      }
      last = item;
    }
    return last;
  }

  /** The highest temperature of the conductors, 20 °C where nothing is written. */
  public double celsius() {
    Temperature highest = line == null ? null : line.maximumTemperature().orNull();
    return highest == null ? USUAL_CELSIUS : highest.celsius();
  }
}
