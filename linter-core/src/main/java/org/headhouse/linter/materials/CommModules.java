package org.headhouse.linter.materials;

import java.util.List;
import org.headhouse.linter.materials.Part.Kind;
import org.headhouse.linter.materials.Part.Spot;
import org.headhouse.linter.site.CommModule;
import org.headhouse.linter.site.ModuleNeed;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/** The communication module of a unit. */
final class CommModules {
  private CommModules() {}

  /** One, none where it is built in, or one that is not counted where the file is not clear. */
  static List<Part> of(Unit unit) {
    Setting<CommModule> written = unit.commModule();
    Setting<ModuleNeed> need = unit.type().commModule();
    CommModule module = written.orNull();
    if (module == null) {
      return written.isFaulty() || !need.isGiven()
          ? List.of(part(unit, null, "comm-module of " + unit.called() + " is not known"))
          : need.is(ModuleNeed.NEEDED) ? List.of(fitted(unit)) : List.of();
    }
    return switch (module) {
      case FITTED -> List.of(fitted(unit));
      case ABSENT -> List.of(absent(unit, " has none, and cannot reach the line without one"));
      case BUILT_IN ->
          need.is(ModuleNeed.NEEDED)
              ? List.of(absent(unit, " says built-in, and its type needs one to be fitted"))
              : List.of();
    };
  }

  private static Part absent(Unit unit, String why) {
    return Part.absent(
        Material.COMM_MODULE, type(unit), Spot.at(Kind.DEVICE, unit.index()), unit.called() + why);
  }

  private static Part fitted(Unit unit) {
    return part(unit, 1.0, "communication module at " + unit.called());
  }

  private static Part part(Unit unit, @Nullable Double amount, String words) {
    return new Part(
        Material.COMM_MODULE, type(unit), amount, Spot.at(Kind.DEVICE, unit.index()), words);
  }

  private static String type(Unit unit) {
    return unit.deviceType().optional().map(type -> "for " + type).orElse("");
  }
}
