package org.headhouse.linter.visit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.draft.Faults;

/**
 * What one person found on one day.
 *
 * @param rows in the order of the list
 */
record Visit(VisitRow.Signed signature, List<VisitRow> rows) {
  Visit {
    rows = List.copyOf(rows);
  }

  /**
   * The visits of a list, the oldest first; those of one day in the order of the list. A remark
   * that nobody signed belongs to the only visit; where there are several, it is reported.
   */
  static List<Visit> of(List<VisitRow> rows, Faults faults) {
    Map<VisitRow.Signed, List<VisitRow>> signed = new LinkedHashMap<>();
    for (VisitRow row : rows) {
      VisitRow.Signed signature = row.signature();
      if (signature != null) {
        signed.computeIfAbsent(signature, it -> new ArrayList<>()).add(row);
      }
    }
    for (VisitRow row : rows) {
      if (row.signature() == null && signed.size() == 1) {
        signed.values().iterator().next().add(row);
      } else if (row.signature() == null && signed.size() > 1) {
        faults.add(
            row.cell(),
            "nobody can tell of which visit " + row.cell().shown() + " is",
            "the list has rows of " + signed.size() + " visits",
            "fill in by and date in this row");
      }
    }
    return signed.entrySet().stream()
        .map(one -> new Visit(one.getKey(), one.getValue()))
        .sorted(Comparator.comparing(visit -> visit.signature().day()))
        .toList();
  }
}
