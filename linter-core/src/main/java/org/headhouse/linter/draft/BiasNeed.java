package org.headhouse.linter.draft;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
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
import org.headhouse.linter.site.Length;

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

  /** A length is not known. */
  record Unknown() implements BiasNeed {}

  /**
   * Computes the need of a line without repeaters, terminated at both ends, for parts at the ends
   * of their tolerances.
   */
  static BiasNeed of(List<ListedUnit> units, DraftSettings settings, SitePolicy policy) {
    List<ListedUnit> beforeLast = units.subList(0, units.size() - 1);
    if (beforeLast.stream().anyMatch(unit -> unit.cableToNext() == null)) {
      return new Unknown();
    }
    double supply =
        settings.biasSupply() == null ? USUAL_SUPPLY_VOLTS : settings.biasSupply().volts();
    Wire wire = wire(settings.gauge());
    CableSpread cable = CableSpread.atWeakest(wire, null, policy.tolerances());
    SegmentSpread spread =
        new SegmentSpread(circuit(units, settings, wire), cable, policy.tolerances());
    BiasChoice choice = BiasSizing.choice(spread, 0, supply, policy.wantedIdleVolts());
    return choice == null || choice.item() != 0 || choice.standardOhms() == null
        ? new Beyond()
        : new Resistors(choice.standardOhms());
  }

  private static SegmentCircuit circuit(List<ListedUnit> units, DraftSettings settings, Wire wire) {
    Terminator terminator = Terminator.resistor(settings.impedance().ohms());
    int last = units.size() - 1;
    List<SegmentItem> items =
        IntStream.rangeClosed(0, last)
            .mapToObj(
                i ->
                    new SegmentItem(
                        units.get(i).name(),
                        units.get(i).type().unitLoad(),
                        i == 0 || i == last ? terminator : null,
                        null))
            .toList();
    List<Double> metres =
        units.stream()
            .limit(last)
            .map(ListedUnit::cableToNext)
            .filter(Objects::nonNull)
            .map(Length::metres)
            .toList();
    return new SegmentCircuit(items, metres, wire.resistanceOhmsPerMetre(20));
  }

  private static Wire wire(Gauge gauge) {
    return gauge instanceof Gauge.Awg awg
        ? Wire.awg(awg.number())
        : Wire.squareMillimetres(((Gauge.Area) gauge).squareMillimetres());
  }
}
