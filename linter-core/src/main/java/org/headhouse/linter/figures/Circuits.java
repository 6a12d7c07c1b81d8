package org.headhouse.linter.figures;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.line.BiasResistors;
import org.headhouse.linter.line.SegmentCircuit;
import org.headhouse.linter.line.SegmentItem;
import org.headhouse.linter.line.Terminator;
import org.headhouse.linter.line.Wire;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.Cable;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Gauge;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Segment;
import org.headhouse.linter.site.Termination;
import org.headhouse.linter.site.Voltage;
import org.jspecify.annotations.Nullable;

/** Makes the circuit for the formulas from a segment of the file. */
final class Circuits {
  private Circuits() {}

  /** The circuit, or null where a part of it is missing, not understood, or no real value. */
  static @Nullable SegmentCircuit of(
      SegmentLine segmentLine, LineSettings line, List<Double> hopMetres) {
    Segment segment = segmentLine.segment();
    Double ohmsPerMetre = ohmsPerMetre(line, segmentLine.celsius());
    if (ohmsPerMetre == null || line.bias().isFaulty()) {
      return null;
    }
    @Nullable BiasResistors[] fitted = new BiasResistors[segment.items().size()];
    for (Bias bias : segmentLine.biases()) {
      int at = segmentLine.itemOf(bias);
      BiasResistors resistors = resistors(bias);
      if (resistors == null || fitted[at] != null) {
        return null;
      }
      fitted[at] = resistors;
    }
    List<SegmentItem> items = new ArrayList<>(segment.items().size());
    for (int i = 0; i < segment.items().size(); i++) {
      ChainItem item = segment.items().get(i);
      Termination termination = segment.termination(item).orNull();
      if (termination == null
          || isShort(termination)
          || item.unitLoadSetting(segment.side(item)).isFaulty()) {
        return null;
      }
      items.add(
          new SegmentItem(
              item.name().or(""),
              item instanceof Repeater ? SegmentItem.Kind.REPEATER_SIDE : SegmentItem.Kind.UNIT,
              item.unitLoad(segment.side(item)),
              terminator(termination),
              fitted[i]));
    }
    return new SegmentCircuit(items, hopMetres, ohmsPerMetre);
  }

  private static boolean isShort(Termination termination) {
    Resistance resistance = termination.resistance();
    return resistance != null && resistance.ohms() <= 0;
  }

  private static @Nullable Terminator terminator(Termination termination) {
    Resistance resistance = termination.resistance();
    return resistance == null
        ? null
        : new Terminator(resistance.ohms(), termination.capacitance() != null);
  }

  private static @Nullable BiasResistors resistors(Bias bias) {
    Resistance each = bias.resistors().orNull();
    Voltage supply = bias.supply().orNull();
    return each == null
            || supply == null
            || bias.side().isFaulty()
            || each.ohms() <= 0
            || supply.volts() <= 0
        ? null
        : new BiasResistors(each.ohms(), supply.volts());
  }

  private static @Nullable Double ohmsPerMetre(LineSettings line, double celsius) {
    Cable cable = line.cable().orNull();
    Wire wire = cable == null ? null : wire(cable.gauge().orNull());
    if (wire == null || line.maximumTemperature().isFaulty()) {
      return null;
    }
    return celsius <= Wire.LEAST_CELSIUS ? null : wire.resistanceOhmsPerMetre(celsius);
  }

  /** The conductor of a gauge; null for one without a cross-section. */
  private static @Nullable Wire wire(@Nullable Gauge gauge) {
    if (gauge instanceof Gauge.Awg awg) {
      return Wire.awg(awg.number());
    }
    return gauge instanceof Gauge.Area area && area.squareMillimetres() > 0
        ? Wire.squareMillimetres(area.squareMillimetres())
        : null;
  }
}
