package org.headhouse.linter.draft;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.line.BiasChoice;
import org.headhouse.linter.line.BiasSizing;
import org.headhouse.linter.line.CableSpread;
import org.headhouse.linter.line.SegmentCircuit;
import org.headhouse.linter.line.SegmentItem;
import org.headhouse.linter.line.SegmentSpread;
import org.headhouse.linter.line.Terminator;
import org.headhouse.linter.line.Wire;
import org.headhouse.linter.site.Gauge;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.Termination;
import org.jspecify.annotations.Nullable;

/** Which bias at the head unit holds every unit of an idle line in a clear state. */
sealed interface BiasNeed {

  /**
   * The supply that is reckoned with where none is given: that of most line drivers (common
   * practice, no source).
   */
  double USUAL_SUPPLY_VOLTS = 5;

  /** Resistors of this value each. */
  record Resistors(double ohms) implements BiasNeed {}

  /** No resistors that the Modbus specification allows are enough. */
  record Beyond() implements BiasNeed {}

  /** A length or a terminator is not known. */
  record Unknown() implements BiasNeed {}

  /** There are repeaters, so that each segment needs a bias of its own. */
  record InEachSegment() implements BiasNeed {}

  /**
   * Computes the need of a line without repeaters, for parts at the ends of their tolerances.
   *
   * @param head the index of the head unit
   */
  static BiasNeed of(List<ItemText> items, int head, DraftSettings settings, SitePolicy policy) {
    if (items.stream().anyMatch(item -> item.kind() == ItemKind.REPEATER)) {
      return new InEachSegment();
    }
    Wire wire = wire(settings.gauge());
    SegmentCircuit circuit = circuit(items, wire);
    if (circuit == null) {
      return new Unknown();
    }
    double supply =
        settings.biasSupply() == null ? USUAL_SUPPLY_VOLTS : settings.biasSupply().volts();
    CableSpread cable = CableSpread.atWeakest(wire, null, policy.tolerances());
    SegmentSpread spread = new SegmentSpread(circuit, cable, policy.tolerances());
    BiasChoice choice = BiasSizing.choice(spread, head, supply, policy.wantedIdleVolts());
    return choice == null || choice.item() != head || choice.standardOhms() == null
        ? new Beyond()
        : new Resistors(choice.standardOhms());
  }

  private static @Nullable SegmentCircuit circuit(List<ItemText> items, Wire wire) {
    List<SegmentItem> loads = new ArrayList<>();
    List<Double> metres = new ArrayList<>();
    for (ItemText item : items) {
      String written = item.value(Column.TERMINATION);
      Termination termination = written == null ? null : Quantities.termination(written);
      if (termination == null) {
        return null;
      }
      loads.add(
          new SegmentItem(item.name(), item.type().unitLoad(), terminator(termination), null));
      String cable = item.value(Column.LENGTH);
      Length length = cable == null ? null : Quantities.length(cable);
      if (length != null) {
        metres.add(length.metres());
      }
    }
    return metres.size() < items.size() - 1
        ? null
        : new SegmentCircuit(loads, metres, wire.resistanceOhmsPerMetre(20));
  }

  private static @Nullable Terminator terminator(Termination termination) {
    if (termination.resistance() == null || termination.resistance().ohms() <= 0) {
      return null;
    }
    double ohms = termination.resistance().ohms();
    return termination.capacitance() == null
        ? Terminator.resistor(ohms)
        : Terminator.resistorAndCapacitor(ohms);
  }

  private static Wire wire(Gauge gauge) {
    return gauge instanceof Gauge.Awg awg
        ? Wire.awg(awg.number())
        : Wire.squareMillimetres(((Gauge.Area) gauge).squareMillimetres());
  }
}
