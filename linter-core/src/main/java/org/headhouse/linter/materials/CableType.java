package org.headhouse.linter.materials;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.site.Cable;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Quantity;
import org.headhouse.linter.site.Setting;
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
            written(cable.gauge(), "gauge not written"),
            cable.shielded().optional().map(CableType::shield).orElse("shield not written"),
            written(cable.impedance(), "impedance not written"),
            conductors)
        .collect(Collectors.joining(", "));
  }

  private static String shield(boolean shielded) {
    return shielded ? "shielded" : "without shield";
  }

  private static String written(Setting<? extends Quantity> setting, String otherwise) {
    return setting.optional().map(Quantity::written).orElse(otherwise);
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
