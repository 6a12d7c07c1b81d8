package org.headhouse.linter.proof;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;
import org.jspecify.annotations.Nullable;

/**
 * When the whole of a line was last proved, and when it is due again.
 *
 * @param day null where the line is not commissioned, or no day is given
 * @param by who can be asked about it; empty where nobody is named
 * @param next null where the day or the period is not known
 */
public record WholeLineProof(@Nullable LocalDate day, String by, @Nullable LocalDate next) {
  private static final WholeLineProof NONE = new WholeLineProof(null, "", null);

  /**
   * The latest proof of a site. The record of a line that is planned again proves nothing of it.
   *
   * @param every how often the whole line is proved again; zero for never
   */
  public static WholeLineProof of(Site site, Period every) {
    Commissioning commissioning = site.commissioning().orNull();
    if (commissioning == null || !site.stage().is(Stage.COMMISSIONED)) {
      return NONE;
    }
    ProvingRecord whole = record(site, commissioning);
    LocalDate day = whole.dayOrNull();
    return new WholeLineProof(
        day, whole.by().or(""), day == null || every.isZero() ? null : day.plus(every));
  }

  /**
   * The record of that proof. A renewal that proves all that a record has to prove renews all of
   * it; a part does not.
   */
  public static ProvingRecord record(Site site, Commissioning commissioning) {
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
