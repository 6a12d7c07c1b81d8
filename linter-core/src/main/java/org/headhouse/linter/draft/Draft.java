package org.headhouse.linter.draft;

import java.util.List;

/** What came of a list of units. */
public sealed interface Draft {

  /**
   * The list was understood.
   *
   * @param text of the site definition, lines ended by LF
   */
  record Made(String text) implements Draft {}

  /**
   * The list has faults, and nothing is made of it.
   *
   * @param faults in the order of the list, at least one
   */
  record Refused(List<ListFault> faults) implements Draft {
    public Refused {
      faults = List.copyOf(faults);
      if (faults.isEmpty()) {
        throw new IllegalArgumentException("a list is not refused without a fault");
      }
    }
  }
}
