package org.headhouse.linter.rules.traffic;

import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.TrafficFit;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/** Writes what makes the traffic fit: a longer period where one does, else a higher rate. */
final class TrafficFix {
  private TrafficFix() {}

  static @Nullable FixDraft fix(TrafficFit fit, Site site) {
    if (fit.periodSeconds().isPresent()) {
      String period = Shown.atLeastSeconds(fit.periodSeconds().getAsDouble());
      return FixDraft.proposed(
          "Set every: " + period + " for " + fit.part(), Edit.write(fit.place(), period));
    }
    LineSettings line = site.line().orNull();
    return line == null || fit.baud().isEmpty()
        ? null
        : FixDraft.proposed(
            "Set all units and the line to " + fit.baud().getAsInt() + " bit/s",
            Edit.plain(line.baud().place(), fit.baud().getAsInt()));
  }
}
