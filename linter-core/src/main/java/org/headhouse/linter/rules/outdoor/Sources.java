package org.headhouse.linter.rules.outdoor;

import java.util.List;
import java.util.stream.Collectors;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.site.Outdoor;
import org.headhouse.linter.site.Reading;
import org.headhouse.linter.site.ReadingSource;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/** Writes the source that a unit must take readings from. */
final class Sources {
  private Sources() {}

  /** Another source for a reading. */
  static FixDraft written(
      Setting<ReadingSource> source, Reading reading, ReadingSource wanted, Unit unit, Site site) {
    return fix(reading.word(), wanted, unit, site, Edit.write(source.place(), wanted.word()));
  }

  /**
   * A source for readings that have none.
   *
   * @param outdoor null where the unit says nothing at all
   */
  static FixDraft added(
      @Nullable Outdoor outdoor,
      List<String> readings,
      ReadingSource wanted,
      Unit unit,
      Site site) {
    String all =
        readings.stream()
            .map(reading -> reading + ": " + wanted.word())
            .collect(Collectors.joining(", ", "{", "}"));
    return fix(
        String.join(", ", readings),
        wanted,
        unit,
        site,
        outdoor == null
            ? Edit.addKey(unit.place(), "termination", "outdoor", all)
            : new Edit.AddKeys(outdoor.place(), "", readings, wanted.word()));
  }

  private static FixDraft fix(
      String readings, ReadingSource wanted, Unit unit, Site site, Edit edit) {
    return FixDraft.onSite(
        site.isPlanned(),
        "Set "
            + unit.called()
            + " to take "
            + readings
            + (wanted == ReadingSource.HEAD ? " from the head unit" : " as " + wanted.word()),
        edit);
  }
}
