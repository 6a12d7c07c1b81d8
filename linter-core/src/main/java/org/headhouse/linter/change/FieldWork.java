package org.headhouse.linter.change;

import java.util.List;

/** The way from one state to the other, or why there is none. */
public sealed interface FieldWork {

  /**
   * The steps in their order; none where nothing is to be done on the site.
   *
   * @param remarks what the steps do not cover
   */
  record Plan(List<Step> steps, List<String> remarks) implements FieldWork {
    public Plan {
      steps = List.copyOf(steps);
      remarks = List.copyOf(remarks);
    }
  }

  /**
   * No plan.
   *
   * @param reason a clause without a full stop, with what to do about it
   */
  record None(String reason) implements FieldWork {}
}
