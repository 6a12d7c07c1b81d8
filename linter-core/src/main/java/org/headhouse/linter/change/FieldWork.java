package org.headhouse.linter.change;

import java.util.List;

/** The way from one state to the other, or why there is none. */
public sealed interface FieldWork {

  /**
   * The steps in their order; none where nothing is to be done on the site.
   *
   * @param remarks what the steps do not cover
   * @param addressing the ways of giving addresses to units that join a commissioned line; none
   *     where none joins
   */
  record Plan(List<PlannedStep> steps, List<String> remarks, List<AddressingWay> addressing)
      implements FieldWork {
    public Plan {
      steps = List.copyOf(steps);
      remarks = List.copyOf(remarks);
      addressing = List.copyOf(addressing);
    }
  }

  /**
   * No plan.
   *
   * @param reason a clause without a full stop, with what to do about it
   */
  record None(String reason) implements FieldWork {}
}
