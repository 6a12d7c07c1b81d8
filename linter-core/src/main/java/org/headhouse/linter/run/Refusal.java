package org.headhouse.linter.run;

import java.util.List;

/**
 * Why nothing is made of what a user gives.
 *
 * @param what has how many faults
 * @param faults a line for each, with its place
 */
public record Refusal(String what, List<String> faults) {
  public Refusal {
    faults = List.copyOf(faults);
  }
}
