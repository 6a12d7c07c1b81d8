package org.headhouse.linter.diagram;

import java.util.List;
import java.util.stream.Collectors;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.DeviceType;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** Which conductors are connected at which items. */
final class LandedConductors {
  private static final int NOWHERE = -1;

  private LandedConductors() {}

  /** The marks of the terminals of an item that carry a conductor: {@code A B G}. */
  static String marks(Setting<List<Setting<Conductor>>> landed, DeviceType type) {
    List<Setting<Conductor>> conductors = landed.orNull();
    if (conductors == null) {
      return "not known what is";
    }
    return conductors.isEmpty()
        ? "nothing"
        : conductors.stream()
            .map(conductor -> conductor.optional().map(type::mark).orElse("?"))
            .map(Lettering::visible)
            .sorted()
            .distinct()
            .collect(Collectors.joining(" "));
  }

  /**
   * The place in the chain of the unit where the common meets protective earth, or -1: the head
   * unit where its G is landed, generally the one point for it (MODBUS over Serial Line V1.02
   * §3.3.2, §3.4.4), or the only unit that lands G.
   */
  static int earthAt(Site site) {
    List<Unit> grounded = site.units().stream().filter(LandedConductors::landsGround).toList();
    return grounded.stream()
        .filter(Unit::isHead)
        .findFirst()
        .map(Unit::index)
        .orElse(grounded.size() == 1 ? grounded.get(0).index() : NOWHERE);
  }

  private static boolean landsGround(Unit unit) {
    return unit.conductors().or(List.of()).stream().anyMatch(one -> one.is(Conductor.G));
  }
}
