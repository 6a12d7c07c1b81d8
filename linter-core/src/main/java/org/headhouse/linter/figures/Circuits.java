package org.headhouse.linter.figures;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.line.BiasResistors;
import org.headhouse.linter.line.SegmentItem;
import org.headhouse.linter.line.Terminator;
import org.headhouse.linter.line.Tolerances;
import org.headhouse.linter.line.Wire;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.Cable;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Gauge;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Percentage;
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Segment;
import org.headhouse.linter.site.Temperature;
import org.headhouse.linter.site.Termination;
import org.headhouse.linter.site.Voltage;
import org.jspecify.annotations.Nullable;

/** Makes the circuit for the formulas from a segment of the file. */
final class Circuits {
  private Circuits() {}

  /** The parts, or null where one of them is missing, not understood, or no real value. */
  static @Nullable SegmentParts of(
      SegmentLine segmentLine, LineSettings line, List<Double> hopMetres, Tolerances tolerances) {
    Segment segment = segmentLine.segment();
    Wire wire = wire(line);
    if (wire == null
        || line.maximumTemperature().isFaulty()
        || segmentLine.celsius() <= Wire.LEAST_CELSIUS
        || line.bias().isFaulty()) {
      return null;
    }
    @Nullable BiasResistors[] fitted = new BiasResistors[segment.items().size()];
    for (Bias bias : segmentLine.biases()) {
      int at = segmentLine.itemOf(bias);
      BiasResistors resistors = resistors(bias);
      if (resistors == null) {
        return null;
      }
      fitted[at] = fitted[at] == null ? resistors : fitted[at].beside(resistors, tolerances);
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
              item.unitLoad(segment.side(item)),
              terminator(termination),
              fitted[i]));
    }
    Temperature highest = line.maximumTemperature().orNull();
    return new SegmentParts(items, hopMetres, wire, highest == null ? null : highest.celsius());
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
    if (each == null
        || supply == null
        || bias.side().isFaulty()
        || bias.tolerance().isFaulty()
        || each.ohms() <= 0
        || supply.volts() <= 0) {
      return null;
    }
    Percentage own = bias.tolerance().orNull();
    return new BiasResistors(each.ohms(), supply.volts(), own == null ? null : own.share());
  }

  /** The conductors of the cable; null where their size is not known. */
  static @Nullable Wire wire(LineSettings line) {
    Cable cable = line.cable().orNull();
    return cable == null ? null : wire(cable.gauge().orNull());
  }

  private static @Nullable Wire wire(@Nullable Gauge gauge) {
    if (gauge instanceof Gauge.Awg awg) {
      return Wire.awg(awg.number());
    }
    return gauge instanceof Gauge.Area area && area.squareMillimetres() > 0
        ? Wire.squareMillimetres(area.squareMillimetres())
        : null;
  }
}
