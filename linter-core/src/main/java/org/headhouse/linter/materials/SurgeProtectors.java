package org.headhouse.linter.materials;

import java.util.List;
import org.headhouse.linter.materials.Part.Kind;
import org.headhouse.linter.materials.Part.Spot;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Run;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.SurgeProtection;
import org.jspecify.annotations.Nullable;

/** The surge protectors of a run of cable. */
final class SurgeProtectors {
  /** One at each end. */
  private static final double OF_A_RUN = 2;

  private SurgeProtectors() {}

  /** Two, none, or some that are not counted where the run needs them and the file has none. */
  static List<Part> of(ChainItem item, ChainItem next) {
    Setting<SurgeProtection> protection = item.surgeProtectionToNext();
    String run = "the run from " + item.called() + " to " + next.called();
    if (protection.is(SurgeProtection.FITTED)) {
      return List.of(part(item, OF_A_RUN, "both ends of " + run));
    }
    if (item.runToNext().is(Run.BETWEEN_BUILDINGS)) {
      return List.of(
          Part.absent(
              Material.SURGE_PROTECTOR,
              "",
              Spot.after(Kind.SURGE, item.index()),
              run + " is between buildings, and has none"));
    }
    return protection.isFaulty() || item.runToNext().isFaulty()
        ? List.of(part(item, null, run))
        : List.of();
  }

  private static Part part(ChainItem item, @Nullable Double amount, String words) {
    return new Part(
        Material.SURGE_PROTECTOR, "", amount, Spot.after(Kind.SURGE, item.index()), words);
  }
}
