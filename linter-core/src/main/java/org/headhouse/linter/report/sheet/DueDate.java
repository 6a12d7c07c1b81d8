package org.headhouse.linter.report.sheet;

import java.time.LocalDate;
import java.time.Period;
import org.headhouse.linter.proof.WholeLineProof;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;
import org.jspecify.annotations.Nullable;

/** When the whole line of a site is to be proved again. */
final class DueDate {
  private DueDate() {}

  /** The day; null where the policy sets no period, and where no whole line was proved. */
  static @Nullable LocalDate of(Site site, SheetSettings settings) {
    Period every = settings.policy().retestEvery();
    LocalDate proved = lastProof(site);
    return every.isZero() || proved == null ? null : proved.plus(every);
  }

  /** The day on which the whole line was proved last; null where it was not. */
  static @Nullable LocalDate lastProof(Site site) {
    Commissioning commissioning = site.commissioning().orNull();
    return commissioning == null || !site.stage().is(Stage.COMMISSIONED)
        ? null
        : WholeLineProof.latest(site, commissioning).dayOrNull();
  }
}
