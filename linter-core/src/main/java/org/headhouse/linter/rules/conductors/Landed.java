package org.headhouse.linter.rules.conductors;

import java.util.List;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.Setting;

/** Looks at what is landed on the line terminals of one unit. */
final class Landed {
  private Landed() {}

  static boolean isUnderstood(List<Setting<Conductor>> landed) {
    for (int i = 0; i < landed.size(); i++) {
      if (landed.get(i).isFaulty()) {
        return false;
      }
    }
    return true;
  }

  static boolean hasPair(List<Setting<Conductor>> landed) {
    return has(Conductor.A, landed) && has(Conductor.B, landed);
  }

  static boolean has(Conductor conductor, List<Setting<Conductor>> landed) {
    for (int i = 0; i < landed.size(); i++) {
      if (landed.get(i).is(conductor)) {
        return true;
      }
    }
    return false;
  }
}
