package org.headhouse.linter.visit;

import java.util.List;

/**
 * What a list from a visit says.
 *
 * @param site the id of the site, or the path of its file where it has none; empty for none
 * @param reason what the row of the site remarks, which is of the visit as a whole; empty for none
 * @param rows those that are filled in, in the order of the list
 * @param blank how many are not
 * @param unread the headings of columns that are left alone
 */
record VisitList(String site, String reason, List<VisitRow> rows, int blank, List<String> unread) {
  static final VisitList NONE = new VisitList("", "", List.of(), 0, List.of());

  VisitList {
    rows = List.copyOf(rows);
    unread = List.copyOf(unread);
  }
}
