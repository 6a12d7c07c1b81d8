package org.headhouse.linter.report.sheet;

import java.util.List;

/**
 * How the line runs on where one unit is taken off the pair.
 *
 * @param isHead whether it is the head unit, without which the line does not run on
 * @param isEnd whether the line ends there, so that there is nothing to join
 * @param isOnBranch whether it hangs on a branch of the trunk
 * @param neighbour the item that takes over what the unit has; empty where the unit has nothing
 * @param termination the terminator that moves there; empty for none
 * @param bias whether bias resistors move there
 * @param drain whether the ground of the shield moves there
 * @param isJudged whether the line without the unit could be computed
 * @param faults what is outside its limits then, and is not with the unit; headlines of results
 */
public record Bypass(
    boolean isHead,
    boolean isEnd,
    boolean isOnBranch,
    String neighbour,
    String termination,
    boolean bias,
    boolean drain,
    boolean isJudged,
    List<String> faults) {

  public Bypass {
    faults = List.copyOf(faults);
  }

  /** Whether something of the unit has to be fitted elsewhere. */
  boolean moves() {
    return !termination.isEmpty() || bias || drain;
  }
}
