package org.headhouse.linter.sheets;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.change.Difference;
import org.headhouse.linter.change.DueProofs;
import org.headhouse.linter.change.NewRecords;
import org.headhouse.linter.change.ReprovingCheck;
import org.headhouse.linter.change.SiteDifferences;
import org.headhouse.linter.proof.GivenProofs;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;

/**
 * Compares a site with its earlier states, the newest first: what was changed since its record, and
 * not proved again. The same is asked of a single revision where a changed file is checked.
 */
final class RecordComparison {
  private final Site now;
  private final Set<Proof> unproved = new LinkedHashSet<>();
  private boolean outdated;
  private boolean ended;

  RecordComparison(Site now) {
    this.now = now;
  }

  void with(Site before) {
    Commissioning was = before.commissioning().orNull();
    Commissioning record = now.commissioning().orNull();
    if (ended || was == null || record == null || !isLive(before) || !isLive(now)) {
      return;
    }
    NewRecords later = NewRecords.between(was, record);
    if (later.first()) {
      // All was proved anew since: what was changed before that is proved with it.
      ended = true;
      return;
    }
    List<Difference> differences = SiteDifferences.between(before, now);
    if (!ReprovingCheck.isDue(differences)) {
      return;
    }
    List<Proof> due = DueProofs.of(now, differences);
    Set<Proof> given = GivenProofs.of(now, later.renewals());
    boolean lacks = false;
    for (Proof proof : due) {
      if (!given.contains(proof)) {
        unproved.add(proof);
        lacks = true;
      }
    }
    outdated |= lacks || later.renewals().isEmpty();
  }

  private static boolean isLive(Site site) {
    return site.stage().is(Stage.COMMISSIONED);
  }

  boolean isOutdated() {
    return outdated;
  }

  List<Proof> unproved() {
    return List.copyOf(unproved);
  }
}
