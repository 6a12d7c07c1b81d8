package org.headhouse.linter.proof;

import java.util.List;
import java.util.Set;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;

/** Finds the visit on which the whole line was proved last. */
public final class WholeLineProof {
  private WholeLineProof() {}

  /** A renewal that proves all that a record has to prove renews all of it; a part does not. */
  public static ProvingRecord latest(Site site, Commissioning commissioning) {
    Set<Proof> required = RequiredProofs.of(site);
    ProvingRecord latest = commissioning.first();
    for (Setting<ProvingRecord> one : commissioning.renewed().or(List.of())) {
      ProvingRecord renewal = one.orNull();
      if (renewal != null
          && renewal.dayOrNull() != null
          && GivenProofs.of(site, List.of(renewal)).containsAll(required)) {
        latest = renewal;
      }
    }
    return latest;
  }
}
