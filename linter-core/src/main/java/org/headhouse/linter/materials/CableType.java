package org.headhouse.linter.materials;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.site.Cable;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.Gauge;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;

/** What the cable of a line is called where it is ordered. */
final class CableType {
  private CableType() {}

  /** {@code 24 AWG, shielded, 120 ohm, pair}; what the file does not say is said. */
  static String of(Site site) {
    LineSettings line = site.line().orNull();
    Cable cable = line == null ? null : line.cable().orNull();
    String conductors = hasCommon(site) ? "pair and common" : "pair";
    if (cable == null) {
      return "type not written, " + conductors;
    }
    return Stream.of(
            cable.gauge().optional().map(CableType::gauge).orElse("gauge not written"),
            cable.shielded().optional().map(CableType::shield).orElse("shield not written"),
            cable.impedance().optional().map(CableType::impedance).orElse("impedance not written"),
            conductors)
        .collect(Collectors.joining(", "));
  }

  private static String shield(boolean shielded) {
    return shielded ? "shielded" : "without shield";
  }

  /** Equal gauges are one type, however they are written. */
  private static String gauge(Gauge gauge) {
    return gauge instanceof Gauge.Awg awg
        ? awg.number() + " AWG"
        : Shown.plain(((Gauge.Area) gauge).squareMillimetres()) + " mm2";
  }

  private static String impedance(Resistance impedance) {
    return Shown.resistor(impedance.ohms());
  }

  /** A pair alone does not do where the common of some interface is connected. */
  private static boolean hasCommon(Site site) {
    return site.items().stream().anyMatch(CableType::hasCommon);
  }

  private static boolean hasCommon(ChainItem item) {
    return Stream.of(Side.values())
        .map(side -> item.connection(side).conductors().or(List.of()))
        .flatMap(List::stream)
        .anyMatch(conductor -> conductor.is(Conductor.C));
  }
}
