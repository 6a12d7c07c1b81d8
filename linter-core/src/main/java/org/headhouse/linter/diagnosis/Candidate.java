package org.headhouse.linter.diagnosis;

import java.util.List;

/**
 * Faults with each of which all readings can be had, and that no meter tells apart.
 *
 * @param faults one or more
 */
public record Candidate(List<NamedFault> faults) {

  public Candidate {
    faults = List.copyOf(faults);
  }
}
