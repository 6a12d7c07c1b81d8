package org.headhouse.linter.diagnosis;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.fault.Fault;
import org.headhouse.linter.fault.Measurement;
import org.headhouse.linter.fault.Measurement.Quantity;
import org.headhouse.linter.figures.MeasuringPlace;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Toward;
import org.jspecify.annotations.Nullable;

/** Gives faults and measurements of a segment the names of the site. */
final class NamedFaults {
  private final SegmentLine line;
  private final List<ChainItem> items;

  NamedFaults(SegmentLine line) {
    this.line = line;
    this.items = line.segment().items();
  }

  Candidate candidate(List<Fault> group) {
    return new Candidate(group.stream().map(this::named).toList());
  }

  NamedFault named(Fault fault) {
    List<String> at = new ArrayList<>(2);
    at.add(name(fault.from()));
    if (fault.isInHop()) {
      at.add(name(fault.to()));
    }
    List<String> conductors = new ArrayList<>(2);
    if (fault.onD0()) {
      conductors.add("D0");
    }
    if (fault.onD1()) {
      conductors.add("D1");
    }
    Side side = fault.isInHop() ? null : side(fault.from());
    return new NamedFault(fault.kind().word(), at, side, conductors);
  }

  NextMeasurement next(Measurement measurement, Site site) {
    int item = measurement.item();
    return new NextMeasurement(
        measurement.quantity().word(), name(item), side(item), toward(measurement, site));
  }

  private @Nullable Toward toward(Measurement measurement, Site site) {
    if (!measurement.quantity().opensChain()) {
      return null;
    }
    boolean toStart = measurement.quantity() == Quantity.RESISTANCE_TOWARD_HEAD;
    boolean afterHead = SegmentReadingsFound.isAfterHead(site, items.get(measurement.item()));
    return toStart == afterHead ? Toward.HEAD : Toward.END;
  }

  private String name(int item) {
    return ItemNames.of(items.get(item));
  }

  private @Nullable Side side(int item) {
    return new MeasuringPlace(line, item).side();
  }
}
