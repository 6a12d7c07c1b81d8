package org.headhouse.linter.figures;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.line.BiasResistors;
import org.headhouse.linter.line.CableSpread;
import org.headhouse.linter.line.DriverLoad;
import org.headhouse.linter.line.DriverRelief;
import org.headhouse.linter.line.IdleLevels;
import org.headhouse.linter.line.IdleVoltage;
import org.headhouse.linter.line.Levels;
import org.headhouse.linter.line.ReceivedVoltage;
import org.headhouse.linter.line.SegmentCircuit;
import org.headhouse.linter.line.SegmentFigures;
import org.headhouse.linter.line.SegmentItem;
import org.headhouse.linter.line.SegmentSpread;
import org.headhouse.linter.line.Tolerances;
import org.headhouse.linter.line.Wire;
import org.headhouse.linter.line.WorstCorner;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/** What the physics says of one segment, computed when it is first asked for. For one thread. */
@Internal
public final class SegmentNetwork {
  /** At which drivers are judged: cold cable is the heavier load. */
  private static final double DRIVER_CELSIUS = 20;

  /** Two 150 ohm and loads that make just 54 ohm are enough. */
  private static final double ROUNDING = 1e-9;

  private final SegmentParts parts;
  private final SegmentCircuit circuit;
  private final SegmentSpread spread;
  private final int measuredAt;
  private @Nullable SegmentFigures figures;
  private @Nullable IdleVoltage worstIdle;
  private boolean worstIdleKnown;
  private @Nullable ReceivedVoltage worstReceived;
  private boolean worstReceivedKnown;

  SegmentNetwork(SegmentParts parts, double celsius, Tolerances tolerances, int measuredAt) {
    this.parts = parts;
    this.circuit = parts.at(celsius);
    this.spread = parts.spread(circuit, tolerances);
    this.measuredAt = measuredAt;
  }

  /** Everything as it is written. */
  public SegmentCircuit circuit() {
    return circuit;
  }

  /** What the parts may have, for the weakest voltages. */
  public SegmentSpread spread() {
    return spread;
  }

  /** What the parts may have when they are measured, in winter or in summer. */
  public SegmentSpread spreadOfReadings() {
    return parts.ofReadings(circuit, spread.tolerances());
  }

  /** What a cable of other conductors may have there. */
  public CableSpread cable(Wire wire) {
    return CableSpread.atWeakest(wire, parts.celsius(), spread.tolerances());
  }

  /** The figures of the segment as it is written. */
  public SegmentFigures figures() {
    if (figures == null) {
      figures = SegmentFigures.of(circuit, measuredAt);
    }
    return figures;
  }

  /** The lowest idle voltage at the worst corner of all parts; null without bias. */
  public @Nullable IdleVoltage lowestIdleAtWorst() {
    if (!worstIdleKnown) {
      worstIdle = WorstCorner.lowestIdle(spread);
      worstIdleKnown = true;
    }
    return worstIdle;
  }

  /** The weakest signal at the worst corner of all parts; null with less than two items. */
  public @Nullable ReceivedVoltage weakestReceivedAtWorst() {
    if (!worstReceivedKnown) {
      worstReceived = WorstCorner.weakestReceived(spread);
      worstReceivedKnown = true;
    }
    return worstReceived;
  }

  /** Where the conductors of the idle line are against common; null without bias. */
  public @Nullable List<IdleLevels> idleLevels() {
    return IdleLevels.ofAllItems(circuit);
  }

  /** What each item works into while it sends, as it is written and at 20 °C, in ohms. */
  public List<Double> driverLoads() {
    return DriverLoad.ofAllItems(parts.at(DRIVER_CELSIUS));
  }

  /**
   * What the drivers work into at 20 °C, without what has a result of its own: terminators between
   * the ends, and every bias but the first.
   */
  public SegmentCircuit driven() {
    return parts.at(DRIVER_CELSIUS).withoutExtras();
  }

  /** Whether every driver has its 54 ohm with a bias in place of all that is no weak pull. */
  public boolean drives(int biasedItem, BiasResistors bias) {
    List<SegmentItem> items = new ArrayList<>();
    SegmentCircuit driven = driven();
    for (int i = 0; i < driven.items().size(); i++) {
      SegmentItem item = driven.items().get(i);
      BiasResistors pull = item.bias() == null || !item.bias().isWeak() ? null : item.bias();
      BiasResistors other = i == biasedItem ? bias : pull;
      items.add(new SegmentItem(item.name(), item.unitLoads(), item.terminator(), other));
    }
    SegmentCircuit changed =
        new SegmentCircuit(items, driven.hopLengthsMetres(), driven.ohmsPerMetre());
    return DriverLoad.heaviest(changed).ohms() >= Levels.LEAST_DRIVER_LOAD_OHMS * (1 - ROUNDING);
  }

  /**
   * Whether the bias holds the idle line at the worst corner of all parts, once no terminator has
   * less than some ohms.
   */
  public boolean holdsIdleWith(double leastTerminatorOhms, double wantedVolts) {
    SegmentSpread changed =
        new SegmentSpread(
            DriverRelief.withTerminatorsOf(circuit, leastTerminatorOhms),
            spread.cable(),
            spread.tolerances());
    IdleVoltage worst = WorstCorner.lowestIdle(changed);
    return worst != null && worst.volts() >= wantedVolts;
  }

  /** The driver that works into the least, where that is too little; null where all have enough. */
  public @Nullable DriverLoad overloadedDriver() {
    if (DriverLoad.leastPossibleOhms(circuit) >= Levels.LEAST_DRIVER_LOAD_OHMS) {
      return null;
    }
    DriverLoad heaviest = DriverLoad.heaviest(driven());
    return heaviest.ohms() < Levels.LEAST_DRIVER_LOAD_OHMS * (1 - ROUNDING) ? heaviest : null;
  }
}
