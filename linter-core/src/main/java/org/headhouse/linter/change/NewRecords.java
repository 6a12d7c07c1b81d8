package org.headhouse.linter.change;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * The records of visits since an earlier state.
 *
 * @param first whether the first record is of a later day than it was
 * @param renewals the entries that were added, of a day that is not before those that were there;
 *     one that nobody has dated yet is among them
 */
@Internal
public record NewRecords(boolean first, List<ProvingRecord> renewals) {

  public NewRecords {
    renewals = List.copyOf(renewals);
  }

  /** Compares the records of two states. */
  public static NewRecords between(Commissioning before, Commissioning after) {
    LocalDate was = before.first().dayOrNull();
    LocalDate is = after.first().dayOrNull();
    LocalDate latest =
        before.records().stream()
            .map(ProvingRecord::dayOrNull)
            .filter(Objects::nonNull)
            .max(Comparator.naturalOrder())
            .orElse(null);
    List<ProvingRecord> renewals = renewals(after);
    // An entry of before is one with its day: what is written beside it may be corrected.
    for (ProvingRecord old : renewals(before)) {
      LocalDate day = old.dayOrNull();
      for (int i = 0; i < renewals.size(); i++) {
        if (Objects.equals(renewals.get(i).dayOrNull(), day)) {
          renewals.remove(i);
          break;
        }
      }
    }
    renewals.removeIf(one -> isBefore(one.dayOrNull(), latest));
    return new NewRecords(isBefore(was, is), renewals);
  }

  private static List<ProvingRecord> renewals(Commissioning commissioning) {
    List<ProvingRecord> renewals = new ArrayList<>();
    for (Setting<ProvingRecord> one : commissioning.renewed().or(List.of())) {
      one.optional().ifPresent(renewals::add);
    }
    return renewals;
  }

  private static boolean isBefore(@Nullable LocalDate one, @Nullable LocalDate other) {
    return one != null && other != null && one.isBefore(other);
  }
}
