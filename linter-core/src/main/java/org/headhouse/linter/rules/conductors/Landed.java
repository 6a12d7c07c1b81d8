package org.headhouse.linter.rules.conductors;

import java.util.List;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.Connection;
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

  /** Whether nothing is written of what is landed, or something that is not understood. */
  static boolean isUnknown(List<Connection> connections) {
    for (Connection connection : connections) {
      List<Setting<Conductor>> landed = connection.conductors().orNull();
      if (landed == null || !isUnderstood(landed)) {
        return true;
      }
    }
    return false;
  }

  /** Whether something is written of what is landed that is not understood as a list. */
  static boolean isFaulty(List<Connection> connections) {
    for (Connection connection : connections) {
      if (connection.conductors().isFaulty()) {
        return true;
      }
    }
    return false;
  }

  /** Whether a conductor is landed on any of some connections. */
  static boolean has(List<Connection> connections, Conductor conductor) {
    for (Connection connection : connections) {
      List<Setting<Conductor>> landed = connection.conductors().orNull();
      if (landed != null && has(conductor, landed)) {
        return true;
      }
    }
    return false;
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
